import type { Catalogue } from "../catalogue.js";
import type { KindNames } from "../kindNames.js";

/** The region of a BCP 47 tag, "MX" of "es-MX"; undefined where it names none. */
const regionOf = (tag: string): string | undefined => tag.split("-").find((part) => /^[A-Z]{2}$/.test(part));

export interface ShownNames {
  readonly one: string;
  readonly many: string;
  /** All its other names in the language. */
  readonly also: readonly string[];
}

/** What a kind is called by the readers of a BCP 47 tag: their region's name where the catalogue has one. Spanish, or else English. */
export function namesFor({ names }: Pick<KindNames, "names">, tag: string): ShownNames {
  const set = tag.startsWith("es") ? names.es : names.en;
  const region = regionOf(tag);
  const own = region && set.regional?.find(({ of }) => of.includes(region));
  if (!own) return set;
  const { one, many } = own;
  return { one, many, also: [set.one, ...set.also].filter((name) => name !== one && name !== many) };
}

const made = new WeakMap<Catalogue, Map<string, Catalogue>>();

/** The catalogue as the readers of a BCP 47 tag use its words: of a word for several kinds, the one that is mostly meant there is the usual one. */
export function catalogueFor(catalogue: Catalogue, tag: string): Catalogue {
  const region = regionOf(tag);
  if (region === undefined || !catalogue.groups.some(({ usualIn }) => usualIn?.[region])) return catalogue;
  const known = made.get(catalogue) ?? new Map<string, Catalogue>();
  made.set(catalogue, known);
  const fresh = known.get(region) ?? {
    ...catalogue,
    groups: catalogue.groups.map((group) => {
      const usual = group.usualIn?.[region];
      return usual === undefined ? group : { ...group, usual };
    }),
  };
  known.set(region, fresh);
  return fresh;
}
