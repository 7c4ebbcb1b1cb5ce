import {
  bundledGuidance,
  findKind,
  findKinds,
  folded,
  type MonthSpan,
  seasonOf,
  usualKind,
} from "@keepwright/catalogue";
import { type Finding, InputError } from "@keepwright/planner";
import { kindName } from "../view/kindNames.js";
import { plainText } from "../words/plainText.js";
import type { ClassReader } from "./classReader.js";
import type { ClassRequest, ClassSeason } from "./classRequest.js";
import { shuffled } from "./seeded.js";

/** The request for a class is unreadable, or names what is not known. */
export class ClassError extends InputError {}

/** Most other names that are offered where one is not known. A declared preference, no source. */
const mostOffered = 6;

/** What a class is about, and which words for several kinds were taken for the one that is mostly meant. */
export interface ClassItems {
  /** Ids of the kinds, each once. */
  readonly items: readonly string[];
  readonly taken: readonly TakenWord[];
}

export interface TakenWord {
  /** As it was written. */
  readonly word: string;
  /** The kind's id. */
  readonly id: string;
}

function unknownItem({ handout, say, catalogue }: ClassReader, name: string, index: number): Finding {
  const near = findKinds(catalogue, name, mostOffered).map(({ id }) => kindName(handout, id));
  const word = plainText(name);
  return {
    thing: `class items[${index + 1}]`,
    ...(near.length > 0
      ? {
          value: say("wrong.severalKinds", { word }),
          remedy: say("wrong.severalKinds.remedy", { names: near.join(", ") }),
        }
      : { value: say("wrong.noKind", { word }), remedy: say("wrong.noKind.remedy") }),
  };
}

/** Whether a word is what the readers call the kind themselves, so that nothing was decided for them. */
function isOwnName({ handout }: ClassReader, { word, id }: TakenWord): boolean {
  return (["one", "many"] as const).some((number) => folded(kindName(handout, id, number)) === folded(word));
}

/**
 * The kinds of a list of names, each once, in their order; a word for several kinds stands for the one that is mostly meant in the reader's region.
 * Throws ClassError naming every one that is not known.
 */
export function listedItems(reader: ClassReader, names: readonly string[]): ClassItems {
  const { catalogue } = reader;
  const found = names.map((word) => {
    const sure = findKind(catalogue, word)?.id;
    const usual = sure === undefined ? usualKind(catalogue, word) : undefined;
    return { word, id: sure ?? usual, taken: usual !== undefined };
  });
  const findings = found.flatMap(({ word, id }, index) =>
    id === undefined ? [unknownItem(reader, word, index)] : [],
  );
  if (findings.length > 0) throw new ClassError(findings);
  const taken = found.flatMap(({ word, id, taken }) => (taken && id !== undefined ? [{ word, id }] : []));
  return {
    items: [...new Set(found.flatMap(({ id }) => id ?? []))],
    taken: taken.filter((one) => !isOwnName(reader, one)),
  };
}

/**
 * Kinds that a class for households is usually about: from these a season's kinds are chosen first. A declared preference, no source; it has no say in
 * anything that is computed.
 */
const usual = new Set(
  `apple apricot artichoke asparagus avocado banana basil beet blackberry blueberry broccoli brussels-sprouts cabbage cantaloupe carrot cauliflower
   celery chard cherry cilantro cucumber eggplant fennel fig garlic grape grapefruit green-bean kale kiwifruit leaf-lettuce leek lemon lime mandarin mango
   mushroom nectarine okra onion orange parsley parsnip pea-in-pod peach pear pineapple plum pomegranate potato pumpkin radish raspberry rhubarb
   spinach strawberry sweet-corn sweet-pepper sweet-potato tomato turnip watermelon winter-squash zucchini`.split(
    /\s+/,
  ),
);

const holds = (month: number, [first, last]: MonthSpan): boolean =>
  first <= last ? month >= first && month <= last : month >= first || month <= last;

/** What is read to choose by season, and how it is told that too few are known. */
type SeasonReader = Pick<ClassReader, "catalogue" | "say">;

/** Kinds harvested in that month, not all year, chosen by the seed among the usual ones first. Throws ClassError where there are too few. */
export function seasonItems({ catalogue, say }: SeasonReader, season: ClassSeason, seed: number): string[] {
  const guidance = bundledGuidance("en");
  const inSeason = [...catalogue.commodities.keys()].sort().filter((id) => {
    const told = guidance.get(id);
    if (!told) return false;
    const spans = seasonOf(told.season)[season.region];
    const months = spans.reduce((sum, [first, last]) => sum + ((last - first + 12) % 12) + 1, 0);
    return months < 12 && spans.some((span) => holds(season.month, span));
  });
  const mixed = shuffled(inSeason, seed);
  const chosen = [...mixed.filter((id) => usual.has(id)), ...mixed.filter((id) => !usual.has(id))];
  if (chosen.length < season.kinds)
    throw new ClassError([
      {
        thing: "class season",
        value: say("wrong.fewInSeason", { known: chosen.length, asked: season.kinds }),
        remedy: say("wrong.fewInSeason.remedy"),
      },
    ]);
  return chosen.slice(0, season.kinds).sort();
}

/** The kinds a class is about. Throws ClassError. */
export function classItems(
  reader: ClassReader,
  request: ClassRequest,
  ofHaul: readonly string[],
): ClassItems {
  if (request.items) return listedItems(reader, request.items);
  if (request.season) return { items: seasonItems(reader, request.season, request.seed), taken: [] };
  return { items: [...new Set(ofHaul)], taken: [] };
}
