import {
  bundledGuidance,
  type Catalogue,
  findKind,
  findKinds,
  type MonthSpan,
  seasonOf,
} from "@keepwright/catalogue";
import { type Finding, InputError } from "@keepwright/planner";
import { plainText } from "../words/plainText.js";
import type { ClassRequest, ClassSeason } from "./classRequest.js";
import { shuffled } from "./seeded.js";

/** The request for a class is unreadable, or names what is not known. */
export class ClassError extends InputError {}

/** Most other names that are offered where one is not known. A declared preference, no source. */
const mostOffered = 6;

function unknownItem(catalogue: Catalogue, name: string, index: number): Finding {
  const near = findKinds(catalogue, name, mostOffered).map(
    ({ id }) => catalogue.commodities.get(id)?.names.en.many ?? id,
  );
  return {
    thing: `class items[${index + 1}]`,
    value: `“${plainText(name)}”: ${near.length > 0 ? "it may be more than one kind" : "no kind by this name is known"}`,
    remedy: near.length > 0 ? `Give one of: ${near.join(", ")}.` : "Check the spelling, or try another name.",
  };
}

/** The kinds of a list of names, each once, in their order. Throws ClassError naming every one that is not known. */
export function listedItems(catalogue: Catalogue, names: readonly string[]): string[] {
  const found = names.map((name) => findKind(catalogue, name)?.id);
  const findings = names.flatMap((name, index) =>
    found[index] === undefined ? [unknownItem(catalogue, name, index)] : [],
  );
  if (findings.length > 0) throw new ClassError(findings);
  return [...new Set(found.flatMap((id) => id ?? []))];
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

/** Kinds harvested in that month, not all year, chosen by the seed among the usual ones first. Throws ClassError where there are too few. */
export function seasonItems(catalogue: Catalogue, season: ClassSeason, seed: number): string[] {
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
        value: `${chosen.length} kinds are known to be in season then, ${season.kinds} are asked for`,
        remedy: "Ask for fewer kinds, or name them in items.",
      },
    ]);
  return chosen.slice(0, season.kinds).sort();
}

/** The kinds a class is about. Throws ClassError. */
export function classItems(catalogue: Catalogue, request: ClassRequest, ofHaul: readonly string[]): string[] {
  if (request.items) return listedItems(catalogue, request.items);
  if (request.season) return seasonItems(catalogue, request.season, request.seed);
  return [...new Set(ofHaul)];
}
