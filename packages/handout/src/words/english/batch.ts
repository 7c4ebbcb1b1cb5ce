import type { Messages } from "../message.js";

/** Many pages at once: how far it is, and what came of it. */
export const batchWords = {
  "batch.done": "{count, plural, one {{past} of # row done} other {{past} of # rows done}}",
  "batch.doneOfUnknown": "{count, plural, one {# row done} other {# rows done}}",
  "batch.failed": "{count, plural, one {# failed} other {# failed}}",
  "batch.left.moment": "a few seconds left",
  "batch.left.seconds": "about {seconds} s left",
  "batch.left.minutes": "about {minutes} min left",
  "batch.left.hours": "about {hours} h left",
  "batch.row": "line {line} ({id}): {problem}",
  "batch.made": "{count, plural, one {A page was made for # row.} other {Pages were made for # rows.}}",
  "batch.kept":
    "{count, plural, one {# row was there already, made from the same words.} other {# rows were there already, made from the same words.}}",
  "batch.failures":
    "{count, plural, one {# row failed; it is named above. Put it right and give the same command again.} other {# rows failed; they are named above. Put them right and give the same command again.}}",
  "batch.partly":
    "{count, plural, one {In # row some words were not understood; they are named above and in its plan.} other {In # rows some words were not understood; they are named above and in their plans.}}",
  "batch.where": "All is in the folder {folder}.",
} as const satisfies Messages;
