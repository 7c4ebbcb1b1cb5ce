import type { ClassDocument } from "../classKit.js";
import { documentLines } from "../documentLines.js";
import type { KitRecord, RecordedKit } from "./kitRecord.js";

/** A field of the request that is not what it was, by its path, with both values as JSON; absent where it was not there. */
export interface ChangedField {
  readonly field: string;
  readonly before?: string | undefined;
  readonly after?: string | undefined;
}

export interface ChangedDocument {
  readonly id: string;
  readonly title: string;
  /** The kinds on account of which it changed, as far as its lines name them. */
  readonly items: readonly string[];
  /** Lines that it has no more, and that are new. */
  readonly removed: readonly string[];
  readonly added: readonly string[];
}

interface Named {
  readonly id: string;
  readonly title: string;
}

/** What is different between a kit and the one made before it. */
export interface KitChanges {
  readonly version: 1;
  readonly same: boolean;
  readonly program?: { readonly before: string; readonly after: string } | undefined;
  readonly catalogueChanged: boolean;
  readonly request: readonly ChangedField[];
  readonly items: {
    readonly added: readonly string[];
    readonly removed: readonly string[];
    /** Kinds of both kits of which the catalogue says something else now. */
    readonly changed: readonly string[];
  };
  readonly documents: {
    readonly added: readonly Named[];
    readonly removed: readonly Named[];
    readonly changed: readonly ChangedDocument[];
  };
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

function changedFields(before: unknown, after: unknown, path: string): ChangedField[] {
  if (isObject(before) && isObject(after)) {
    const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])];
    return keys.flatMap((key) =>
      changedFields(before[key], after[key], path === "" ? key : `${path} ${key}`),
    );
  }
  const [was, is] = [before, after].map((value) => (value === undefined ? undefined : JSON.stringify(value)));
  if (was === is) return [];
  return [{ field: path, ...(was !== undefined && { before: was }), ...(is !== undefined && { after: is }) }];
}

/** Lines of the one that the other has not; a line that stands there twice is counted twice. */
function without(lines: readonly string[], others: readonly string[]): string[] {
  const left = new Map<string, number>();
  for (const line of others) left.set(line, (left.get(line) ?? 0) + 1);
  return lines.filter((line) => {
    const count = left.get(line) ?? 0;
    if (count > 0) left.set(line, count - 1);
    return count === 0;
  });
}

const namesOf = ({ items }: KitRecord): ReadonlyMap<string, string> =>
  new Map(items.map(({ id, name }) => [id, name]));

function changedDocument(
  before: ClassDocument,
  after: ClassDocument,
  names: ReadonlyMap<string, string>,
): ChangedDocument[] {
  const [was, is] = [before, after].map(documentLines) as [string[], string[]];
  const [removed, added] = [without(was, is), without(is, was)];
  const reordered = removed.length + added.length === 0 && was.join("\n") !== is.join("\n");
  if (removed.length + added.length === 0 && !reordered) return [];
  const said = [...removed, ...added].join("\n").toLowerCase();
  const about = [...new Set([...before.items, ...after.items])];
  const named = about.filter((id) => said.includes((names.get(id) ?? id).toLowerCase()));
  // A sheet of one kind is about that kind, whether or not the line that changed names it.
  const items = about.length === 1 ? about : named;
  return [{ id: after.id, title: after.title, items, removed, added }];
}

const named = ({ id, title }: ClassDocument): Named => ({ id, title });

/** Compares a kit with the one made before it, by what their documents say. */
export function kitChanges(before: RecordedKit, after: RecordedKit): KitChanges {
  const request = changedFields(before.record.request, after.record.request, "");
  const digests = new Map(before.record.items.map(({ id, digest }) => [id, digest]));
  const ids = after.record.items.map(({ id }) => id);
  const names = new Map([...namesOf(before.record), ...namesOf(after.record)]);
  const was = new Map(before.documents.map((one) => [one.id, one]));
  const is = new Set(after.documents.map(({ id }) => id));
  const items = {
    added: ids.filter((id) => !digests.has(id)),
    removed: [...digests.keys()].filter((id) => !ids.includes(id)),
    changed: after.record.items
      .filter(({ id, digest }) => digests.has(id) && digests.get(id) !== digest)
      .map(({ id }) => id),
  };
  const documents = {
    added: after.documents.filter(({ id }) => !was.has(id)).map(named),
    removed: before.documents.filter(({ id }) => !is.has(id)).map(named),
    changed: after.documents.flatMap((now) => {
      const earlier = was.get(now.id);
      return earlier ? changedDocument(earlier, now, names) : [];
    }),
  };
  const catalogueChanged = before.record.catalogue.digest !== after.record.catalogue.digest;
  const programs = { before: before.record.program, after: after.record.program };
  const moved = Object.values(items).flat().length + Object.values(documents).flat().length;
  const digestsOf = ({ documents: papers, otherFiles }: KitRecord) =>
    [...papers, ...otherFiles].map(({ fileDigest }) => fileDigest).join();
  const sameFiles = digestsOf(before.record) === digestsOf(after.record);
  return {
    version: 1,
    same: moved + request.length === 0 && sameFiles && !catalogueChanged,
    ...(programs.before !== programs.after && { program: programs }),
    catalogueChanged,
    request,
    items,
    documents,
  };
}
