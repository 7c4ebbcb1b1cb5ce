import { createContext } from "react";
import { mostOpenNarrow } from "../../state/manyThings.js";
import type { NowTask } from "../../state/nowTasks.js";

/** In a narrow window: what is to be put away, to be told and ticked off at the places themselves. Otherwise nothing. */
export const FoldedPlaces = createContext<readonly NowTask[] | undefined>(undefined);

/** Whether so many things at one place of a narrow window are told together, and what leads to why and moving is one touch away; of none there is nothing to hide. */
export const isFolded = (entries: number): boolean => entries === 0 || entries > mostOpenNarrow.entries;
