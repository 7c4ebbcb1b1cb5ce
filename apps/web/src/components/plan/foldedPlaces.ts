import { createContext } from "react";
import type { NowTask } from "../../state/nowTasks.js";

/** In a narrow window: what is to be put away, to be told and ticked off at the places themselves. Otherwise nothing. */
export const FoldedPlaces = createContext<readonly NowTask[] | undefined>(undefined);
