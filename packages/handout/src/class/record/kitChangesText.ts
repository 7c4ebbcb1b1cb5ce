import type { ClassSay } from "../../words/class/classSayer.js";
import { plainText } from "../../words/plainText.js";
import type { ChangedDocument, KitChanges } from "./kitChanges.js";

/** Most lines of one document that are printed out; all are in the JSON. Declared preferences, no source. */
const mostLines = 12;
const longestValue = 160;

const shown = (text: string | undefined, none: string): string => {
  if (text === undefined) return none;
  const bare = plainText(text);
  return bare.length > longestValue ? `${bare.slice(0, longestValue)}…` : bare;
};

function documentText(say: ClassSay, changed: ChangedDocument, nameOf: (id: string) => string): string[] {
  const { id, title, items, removed, added } = changed;
  const head =
    items.length > 0
      ? say("changes.document", { title, id, names: items.map(nameOf).join(", ") })
      : say("changes.documentOnly", { title, id });
  const lines = [...removed.map((line) => `  - ${line}`), ...added.map((line) => `  + ${line}`)];
  const more = lines.length - mostLines;
  return [
    head,
    ...lines.slice(0, mostLines).map((line) => plainText(line)),
    ...(removed.length + added.length === 0 ? [`  ${say("changes.order")}`] : []),
    ...(more > 0 ? [`  ${say("changes.more", { count: more })}`] : []),
  ];
}

/** What changed since the kit was made before, for a person to read: what was asked, the kinds, then each document. */
export function kitChangesText(
  say: ClassSay,
  changes: KitChanges,
  names: ReadonlyMap<string, string>,
): string {
  const nameOf = (id: string) => names.get(id) ?? id;
  const { request, items, documents } = changes;
  const listed = (ids: readonly string[]) => ids.map(nameOf).join(", ");
  const lines = changes.same
    ? [say("changes.none")]
    : [
        say("changes.title"),
        ...(changes.program ? [say("changes.program", changes.program)] : []),
        ...(changes.catalogueChanged ? [say("changes.catalogue")] : []),
        ...request.map(({ field, before, after }) =>
          say("changes.field", {
            field,
            before: shown(before, say("changes.nothing")),
            after: shown(after, say("changes.nothing")),
          }),
        ),
        ...(items.added.length > 0 ? [say("changes.itemsAdded", { names: listed(items.added) })] : []),
        ...(items.removed.length > 0 ? [say("changes.itemsRemoved", { names: listed(items.removed) })] : []),
        ...(items.changed.length > 0 ? [say("changes.itemsChanged", { names: listed(items.changed) })] : []),
        ...documents.added.map((one) => say("changes.documentAdded", { ...one })),
        ...documents.removed.map((one) => say("changes.documentRemoved", { ...one })),
        ...documents.changed.flatMap((one) => documentText(say, one, nameOf)),
        ...(documents.added.length + documents.removed.length + documents.changed.length === 0
          ? [say("changes.noDocument")]
          : []),
      ];
  return `${lines.join("\n")}\n`;
}
