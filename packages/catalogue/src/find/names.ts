import type { Commodity } from "../schema.js";

/** Every name a record carries, in both languages, usual names first. */
export function namesOf(commodity: Pick<Commodity, "names">): string[] {
  const { en, es } = commodity.names;
  return [en.one, en.many, ...en.also, es.one, es.many, ...es.also];
}
