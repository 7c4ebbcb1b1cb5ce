import type { PlannedLot } from "@keepwright/planner";
import type { Speaker } from "../../words/speaker.js";

/** Names in a row; parted by semicolons where a name has a comma of its own ("melon, cut"). */
export const listed = (speaker: Speaker, names: readonly string[]): string =>
  names.some((name) => name.includes(",")) ? names.join("; ") : speaker.list(names);

/** How a part is wrapped, shorter than elsewhere where it is not. */
export const sheetWrap = (speaker: Speaker, wrap: PlannedLot["stays"][number]["wrap"]): string =>
  wrap === "none" ? speaker.say("sheet.loose") : speaker.say(`wrap.${wrap}`);
