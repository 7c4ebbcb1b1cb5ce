import { mostOpen } from "../state/manyThings.js";

/** A narrow window, as the styles have it. */
const narrow = "(max-width: 30rem)";

/** Whether there are so many things that their places stand folded in this window. */
export const foldsPlaces = (count: number): boolean => count > mostOpen && matchMedia(narrow).matches;
