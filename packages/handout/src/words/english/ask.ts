import type { Messages } from "../message.js";

/** A short answer about one kind, to be read from afar. */
export const askWords = {
  "ask.whereThen": "{place} until ripe, then {next}",
  "ask.howThen": "{wrap} until ripe, then {nextWrap}",
  "ask.ends": "What ends it: {ending}.",
  "ask.ready": "Ready to eat in {span}.",
  "ask.readyNow": "Ready to eat now.",
  "ask.notReady": "No ripening there.",
  "ask.practice": "{line} *",
  "ask.dairy": "milk, butter and cheese",
  "ask.heading.apart": "Not beside",
  "ask.apart.gas from": "{names}: their ethylene, a ripening gas, takes days from {name}.",
  "ask.apart.gas from unripe":
    "{names}, once it is ripe: their ethylene, a ripening gas, takes days from {name}. Before that it only brings ripeness sooner.",
  "ask.apart.gas to": "{names}: ethylene, a ripening gas, comes off {name} and takes days from them.",
  "ask.apart.smell from": "{names}: {name} take on the smell.",
  "ask.apart.smell to": "{names}: they take on the smell of {name}.",
  "ask.apart.none": "Nothing is known that does harm beside it, or that it harms.",
  "ask.figure.signs": "signs",
  "ask.figure.save": "saving a surplus",
  "ask.figure.trimmings": "trimmings",
  "ask.figure.hazards": "what can hurt",
  "ask.figure.season": "season",
  "ask.figure.preparation": "what to do first",
  "ask.figure.smells": "smells",
  "ask.figure.cutLife": "life once cut",
} as const satisfies Messages;
