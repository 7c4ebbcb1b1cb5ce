import type { Guidance, GuidanceWords } from "../guidance.js";
import type { Source, Wrap, WrapId } from "../tables.js";
import { checkSourcesOf } from "./crossReferences.js";
import { checkMemoryOf } from "./memory.js";

const lists = ["ripe", "going", "discard", "prepare", "trimmings", "save", "hazards"] as const;

/** Languages answer each other line by line, so that a page may show them side by side. */
const checkPairs = (id: string, en: GuidanceWords, es: GuidanceWords): string[] =>
  lists
    .filter((list) => en[list].length !== es[list].length)
    .map(
      (list) =>
        `${id}: guidance.words.${list} has ${en[list].length} lines in English and ${es[list].length} in Spanish; write as many in both.`,
    );

function checkWraps(id: string, { suit }: Guidance["wraps"], wraps: ReadonlyMap<WrapId, Wrap>): string[] {
  const free = suit.filter((wrap) => wraps.get(wrap)?.plastic === false);
  return free.length >= 2
    ? []
    : [
        `${id}: guidance.wraps.suit has ${free.length} without plastic (${suit.join(", ")}); name at least two.`,
      ];
}

const checkBasis = (id: string, { basis, words }: Guidance): string[] =>
  (["trimmings", "hazards"] as const)
    .filter((part) => words.en[part].length > 0 && !basis[part])
    .map((part) => `${id}: guidance.basis.${part} is missing; say where its facts come from.`);

/** What a kind's guidance shows only when its parts are held beside each other, the wraps and the sources. */
export const checkGuidance = (
  id: string,
  guidance: Guidance,
  wraps: ReadonlyMap<WrapId, Wrap>,
  sources: ReadonlyMap<string, Source>,
): string[] => [
  ...checkPairs(id, guidance.words.en, guidance.words.es),
  ...checkWraps(id, guidance.wraps, wraps),
  ...checkBasis(id, guidance),
  ...checkSourcesOf(`${id}: guidance`, guidance, sources),
  ...checkMemoryOf(`${id}: guidance`, guidance, sources),
];
