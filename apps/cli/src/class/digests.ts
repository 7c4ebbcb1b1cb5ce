import { createHash } from "node:crypto";
import { bundledGuidance, type Catalogue, commodityOf, guidanceLanguages } from "@keepwright/catalogue";

/** SHA-256 in hexadecimal, of bytes or of a value as JSON. */
export function digestOf(content: unknown): string {
  const bytes = content instanceof Uint8Array ? content : JSON.stringify(content);
  return createHash("sha256").update(bytes).digest("hex");
}

/** Everything the catalogue says of one kind, in every language. */
export const itemDigest = (catalogue: Catalogue, id: string): string =>
  digestOf([
    commodityOf(catalogue, id),
    ...guidanceLanguages.map((language) => bundledGuidance(language).get(id) ?? null),
  ]);

/** The whole catalogue: kinds, sources, wraps, smells, safety limits and guidance. */
export const catalogueDigest = (catalogue: Catalogue): string =>
  digestOf([
    [...catalogue.commodities],
    [...catalogue.sources],
    catalogue.groups,
    [...catalogue.wraps],
    catalogue.odours,
    [...catalogue.safety],
    ...guidanceLanguages.map((language) => [...bundledGuidance(language)]),
  ]);
