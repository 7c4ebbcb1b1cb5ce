import type { ChangesFor, CheckedRequest, TriedChange } from "../triedChange.js";
import { bunchesTopped } from "./bunchesTopped.js";
import { drawerMore } from "./drawerMore.js";
import { lotFewer } from "./lotFewer.js";
import { portionMore } from "./portionMore.js";
import { refrigeratorColder, refrigeratorWarmer } from "./refrigeratorTemperature.js";
import { ventTurned } from "./ventTurned.js";
import { lidBoxesAtHand, paperBagsAtHand } from "./wrapAtHand.js";

/** The changes that make one request of another. Shopping twice is not among them: it takes two plans (`shoppingTwice`). */
const every: readonly ChangesFor[] = [
  refrigeratorColder,
  refrigeratorWarmer,
  ventTurned,
  lidBoxesAtHand,
  paperBagsAtHand,
  drawerMore,
  bunchesTopped,
  portionMore,
  lotFewer,
];

/** Every change that can be made to a request, each by itself. */
export const changesFor = (request: CheckedRequest): TriedChange[] =>
  every.flatMap((changes) => changes(request));
