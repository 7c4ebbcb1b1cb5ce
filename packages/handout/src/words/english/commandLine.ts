import type { Messages } from "../message.js";

/** What the command line tells beside its answers. */
export const commandLineWords = {
  "door.haul.words": "Haul read from the words given on the command line.",
  "door.haul.input": "Haul read from standard input.",
  "door.haul.file": "Haul read from the file {file}.",
  "door.haul.no file": "Haul read from the words given: no file is called {file}.",
  "door.list.words": "List read from the words given on the command line.",
  "door.list.input": "List read from standard input.",
  "door.list.file": "List read from the file {file}.",
  "door.list.no file": "List read from the words given: no file is called {file}.",
  "door.plan.words": "Plan read from the words given on the command line.",
  "door.plan.input": "Plan read from standard input.",
  "door.plan.file": "Plan read from the file {file}.",
  "door.plan.no file": "Plan read from the words given: no file is called {file}.",
  "door.takenFor": "{typed} is taken for {name}.",
  "door.kitchenFine": "{file} can be planned with.",

  "haul.empty": "The haul is empty. Write what came home, for example: 2 lb apples, a bunch of kale.",
  "list.empty":
    "The list is empty. Write what you would like to buy, for example: 1 kg spinach, 3 heads romaine.",
  "list.notUnderstood":
    "Nothing in the list was understood. Write amounts and names of what you would like to buy, for example: 1 kg spinach, 3 heads romaine.",
  "haul.notUnderstood":
    "Nothing in the haul was understood. Write amounts and names, for example: 2 lb apples, a bunch of kale.",

  "progress.plan": "Working out the plan …",
  "progress.draws": "Carrying it out {count} times …",
  "progress.proof": "Looking for how much better it could be …",
  "progress.why": "Looking at other places …",
  "progress.judge": "Judging how it lies …",
  "progress.improve": "Trying changes, each with a plan of its own …",
  "progress.buy": "Trying amounts, planning anew for each …",
  "progress.carry on": "Carrying the plan on …",
} as const satisfies Messages;
