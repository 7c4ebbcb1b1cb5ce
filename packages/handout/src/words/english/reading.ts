import type { Messages } from "../message.js";

/** What was understood of a haul, and what has to be asked. */
export const readingWords = {
  // What was understood of a haul
  "reading.lot": "“{typed}” → {lot}",
  "lot.line": "{name}, {amount}",
  "lot.lineAssuming": "{name}, {amount} (taken for granted: {assumed})",
  "lot.assumed": "Taken for granted: {assumed}.",
  "reading.notUnderstood": "“{typed}” → not understood",
  "assumed.usual amount": "the usual amount",
  "assumed.usual size": "the usual size",
  "assumed.usual ripeness": "as ripe as usual",
  "assumed.whole": "whole",
  "assumed.spelling": "the spelling",
  "assumed.cut, because half of one": "cut, because it is half of one",
  "assumed.rounded amount": "a rounded amount",
  "assumed.weight from volume": "the weight, from its volume",
  "ask.which commodity": "“{word}”: which kind is it? It could be {candidates}.",
  "ask.which commodity.none": "“{word}”: which kind is it?",
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
  "ask.how much.contradictory": "“{word}”: the amounts do not agree. How much is it?",
} as const satisfies Messages;
