import { createContext } from "react";
import type { NowTask } from "../../state/nowTasks.js";

/** Where there are many things in a narrow window: what is to be put away, to be told and ticked off at the places themselves. Otherwise nothing. */
export const FoldedPlaces = createContext<readonly NowTask[] | undefined>(undefined);
