import type { Messages } from "../../message.js";

/** What is told when a kit was made, and what changed since the last time. */
export const changesEnglish = {
  "made.progress": "Making the kit …",
  "made.kit": "{count, plural, one {Written to {folder}: # paper.} other {Written to {folder}: # papers.}}",
  "made.document": "{pages, plural, one {{file} (# page): {title}} other {{file} (# pages): {title}}}",
  "made.host": "{line} (for the host)",
  "made.taken": "“{word}” may mean several kinds; it was taken for {name}.",
  "made.season":
    "The kinds were chosen by harvest months, which are common practice and have no source: {names}. A list of items is surer.",

  "changes.title": "What changed since this kit was last made",
  "changes.none": "Nothing changed since this kit was last made.",
  "changes.program": "The program: {before} then, {after} now.",
  "changes.catalogue": "The catalogue is not the one it was then.",
  "changes.field": "Asked for, {field}: {before} then, {after} now.",
  "changes.nothing": "nothing",
  "changes.itemsAdded": "New foods: {names}.",
  "changes.itemsRemoved": "Foods no more in it: {names}.",
  "changes.itemsChanged": "The catalogue says something else of: {names}.",
  "changes.documentAdded": "New: {title} ({id}).",
  "changes.documentRemoved": "No more in it: {title} ({id}). Its file was taken away.",
  "changes.document": "Changed: {title} ({id}). It bears on: {names}.",
  "changes.documentOnly": "Changed: {title} ({id}).",
  "changes.order": "The same lines in another order.",
  "changes.more": "{count, plural, one {and # line more} other {and # lines more}}",
  "changes.noDocument": "No document says anything else than it did.",
} as const satisfies Messages;
