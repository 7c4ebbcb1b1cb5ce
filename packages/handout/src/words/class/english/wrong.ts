import type { Messages } from "../../message.js";

/** What is wrong with what was asked for a class: each what stands there, without its full stop, and what would work. */
export const wrongEnglish = {
  "wrong.noKind": "“{word}”: no kind by this name is known",
  "wrong.noKind.remedy": "Check the spelling, or try another name.",
  "wrong.severalKinds": "“{word}”: it may be more than one kind",
  "wrong.severalKinds.remedy": "Give one of: {names}.",
  "wrong.fewInSeason": "{known} kinds are known to be in season then, {asked} are asked for",
  "wrong.fewInSeason.remedy": "Ask for fewer kinds, or name them yourself.",
  "wrong.haul": "not wholly understood",
  "wrong.haul.remedy": "Write amounts and names, for example: 2 lb apples, a bunch of kale.",
} as const satisfies Messages;
