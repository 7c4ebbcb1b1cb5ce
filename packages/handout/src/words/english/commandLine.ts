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
  "door.warning": "Warning: {finding}",
  "door.kitchenFine": "{file} can be planned with.",

  "progress.plan": "Working out the plan …",
  "progress.draws": "Carrying it out {count} times …",
  "progress.proof": "Looking for how much better it could be …",
  "progress.why": "Looking at other places …",
  "progress.judge": "Judging how it lies …",
  "progress.improve": "Trying changes, each with a plan of its own …",
  "progress.buy": "Trying amounts, planning anew for each …",
  "progress.carry on": "Carrying the plan on …",
} as const satisfies Messages;
