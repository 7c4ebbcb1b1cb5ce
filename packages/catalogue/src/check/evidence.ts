import type { Catalogue } from "../catalogue.js";

/** A source named somewhere in the data, and where. */
export interface SourceUse {
  readonly source: string;
  readonly path: string;
}

/** The part of a value's record that says where it comes from and how we know it. */
export interface Evidence {
  readonly source: string;
  readonly place: string;
  readonly kind: string;
  readonly fromMemory: boolean;
  readonly note?: string;
}

type SourceNamer = Record<string, unknown> & { readonly source: string };

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null;

const namesSource = (value: Record<string, unknown>): value is SourceNamer =>
  typeof value.source === "string";

/** Every part of a record that names a source, however deep, with its path. */
export function sourceNamers(value: unknown, path = ""): [string, SourceNamer][] {
  if (!isRecord(value)) return [];
  const own: [string, SourceNamer][] = namesSource(value) ? [[path || "the record", value]] : [];
  const below = Object.entries(value).flatMap(([key, child]) =>
    sourceNamers(child, path ? `${path}.${key}` : key),
  );
  return [...own, ...below];
}

/** Every place in a record that names a source, however deep. */
export const sourceUses = (value: unknown): SourceUse[] =>
  sourceNamers(value).map(([path, { source }]) => ({ source, path }));

/** Every piece of evidence in a record, however deep, with its path. */
export const evidenceIn = (value: unknown): [string, Evidence][] =>
  sourceNamers(value).flatMap(([path, part]): [string, Evidence][] =>
    typeof part.fromMemory === "boolean" ? [[path, part as unknown as Evidence]] : [],
  );

/** All records that rest on sources, each with the name that messages call it by. */
export const recordsOf = (catalogue: Catalogue): [string, unknown][] => [
  ...[...catalogue.commodities].map(([id, value]): [string, unknown] => [id, value]),
  ...[...catalogue.wraps].map(([id, value]): [string, unknown] => [`wrap "${id}"`, value]),
  ...[...catalogue.safety].map(([id, value]): [string, unknown] => [`safety limit "${id}"`, value]),
  ...catalogue.odours.map((pair): [string, unknown] => [`odour ${pair.giver} to ${pair.taker}`, pair]),
];
