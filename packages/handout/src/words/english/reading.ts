import type { Messages } from "../message.js";

/** What was understood of a haul, and what has to be asked. */
export const readingWords = {
  // What was understood of a haul
  "reading.lot": "“{typed}” → {lot}",
  "lot.line": "{name}, {amount}",
  "lot.lineAssuming": "{name}, {amount} (assumed: {assumed})",
  "lot.assumed": "Assumed: {assumed}.",
  "reading.notUnderstood": "“{typed}” → not understood",
  "reading.notPlanned": "“{typed}” → not planned as it is",
  "lot.daysAgo": "{count, plural, one {{name}, from # day ago} other {{name}, from # days ago}}",
  "assumed.usual amount": "the usual amount",
  "assumed.usual size": "the usual size",
  "assumed.usual ripeness": "as ripe as usual",
  "assumed.whole": "whole",
  "assumed.spelling": "the spelling",
  "assumed.cut, because half of one": "cut, because it is part of one",
  "assumed.cut today": "cut today",
  "assumed.rounded amount": "a rounded amount",
  "assumed.weight from volume": "the weight, from its volume",
  "ask.which commodity": "“{word}”: which kind is it? It could be {candidates}.",
  "ask.which commodity.none": "“{word}”: which kind is it?",
  "ask.unsafe or other.raw sprouts":
    "“{word}”: raw sprouts are not planned here. Keep them at 4 °C (40 °F) or colder and cook them well before eating. If Brussels sprouts are meant, write “Brussels sprouts”.",
  "ask.unsafe or other.wild mushrooms":
    "“{word}”: wild mushrooms are not planned here. Eat them only if an expert has seen them and named them. If they were bought as grown mushrooms, write “mushrooms”.",
  "ask.unsafe or other.rhubarb leaves":
    "“{word}”: the leaves of rhubarb are poison, raw or cooked. Throw them away. If stalks are meant, write “rhubarb”.",
  "ask.unsafe or other.in oil":
    "“{word}”: garlic, herbs or vegetables in oil are not fresh produce and can grow dangerous germs. If home-made, refrigerate at once, use within four days, and never leave them at room temperature. If bought, follow the label.",
  "ask.unsafe or other.rotten":
    "“{word}”: throw away what is rotten, and look over what lay beside it. What is sound can be written on a line of its own.",
  "ask.unsafe or other.slimy":
    "“{word}”: throw away what is slimy, and look over what lay beside it. What is sound can be written on a line of its own.",
  "ask.unsafe or other.fermenting":
    "“{word}”: throw away what has begun to ferment by itself. What is sound can be written on a line of its own.",
  "ask.unsafe or other.mouldy":
    "“{word}”: throw away every mouldy piece, however small the spot, and do not sniff it. Look over its neighbours. What is sound can be written on a line of its own.",
  "ask.unsafe or other.mouldy firm":
    "“{word}”: it is firm, so cut away at least 2.5 cm (1 inch) around and below the mould, and keep the knife out of the mould. If it is soft, or mouldy in many places, throw it away. Is there a sound rest to plan? Then plan it as cut.",
  "ask.unsafe or other.green potatoes":
    "“{word}”: cut away every green part and all sprouts, and throw away potatoes that are very green or taste bitter. Should the rest be planned?",
  "ask.unsafe or other.sprouted potatoes":
    "“{word}”: cut away all sprouts and every green part, and throw away potatoes that are very green or taste bitter. Should the rest be planned?",
  "ask.unsafe or other.sprouted":
    "“{word}”: it has begun to sprout, so it is old and a plan would promise too much. Use it first. Should it be planned all the same?",
  "ask.unsafe or other.cooked":
    "“{word}”: cooked food is not planned here. Refrigerate it within two hours, and follow your local food-safety advice.",
  "ask.unsafe or other.frozen":
    "“{word}”: frozen produce is not planned here. Keep it frozen, and follow the label.",
  "ask.unsafe or other.tinned":
    "“{word}”: produce in tins, jars or bottles is not planned here. Follow the label; once open, keep it in the refrigerator, out of the tin.",
  "ask.unsafe or other.dried":
    "“{word}”: dried produce is not planned here. Keep it dry, and follow the label.",
  "ask.unsafe or other.juice": "“{word}”: juice is not planned here. Keep it cold, and follow the label.",
  "ask.unsafe or other.pickled":
    "“{word}”: pickled or fermented produce is not planned here. Follow the label or the tested recipe.",
  "ask.unsafe or other.made from it":
    "“{word}”: this is made from produce and is not planned here; only fresh fruit and vegetables are. Follow the label.",
  "ask.unsafe or other.no produce":
    "“{word}”: no fresh fruit or vegetable, so no part of the plan. Keepwright is about fresh fruit and vegetables alone.",
  "ask.what is this":
    "“{word}”: no kind of fruit or vegetable by this name is known. Is it spelt right, or is there another name?",
  "ask.too many lots": "“{word}”: this is more than one plan can hold (60 things). Plan it in two parts.",
  "ask.how much.no amount": "“{word}”: how much is it?",
  "ask.how much.zero": "“{word}”: the amount is nothing. How much is it?",
  "ask.how much.negative": "“{word}”: an amount cannot be less than nothing. How much is it?",
  "ask.how much.too large": "“{word}”: that is more than a household could have. How much is it?",
  "ask.how much.unknown unit": "“{word}”: this measure is not known. How much is it, in pieces or by weight?",
  "ask.how much.known units":
    "“{word}”: this measure is not known for it. How much is it, by weight or in one of these: {units}?",
  "ask.when wanted":
    "“{word}”: on which day is it wanted, and of what? Write a weekday (“by Friday”, “for Sunday”), “in 4 days” or a date like 2026-06-19.",
  "ask.how old":
    "“{word}”: how many days ago was it bought or cut? Write for example “cut 2 days ago” or “yesterday”. What is cut is not planned until that is known; when in doubt, throw it out.",
  "ask.how much.contradictory": "“{word}”: the amounts do not agree. How much is it?",
} as const satisfies Messages;
