import type { Alternative, AlternativeGround, Objective } from "@keepwright/planner";
import { massWords, toldParts } from "../words/amounts.js";
import { plainText } from "../words/plainText.js";
import { spanWords } from "../words/spans.js";
import type { HandoutContext } from "./context.js";
import { type EndedLot, endingWords } from "./endingWords.js";
import type { LotNames } from "./neighbourLines.js";

/** What a rival is told with: names of lots and places. */
export interface RivalNames {
  readonly lots: LotNames;
  readonly places: ReadonlyMap<string, string>;
  /** The lot that is told of. */
  readonly kind: EndedLot | undefined;
}

/** Most other lots that are named as losing by it. */
const mostNamed = 3;

/** A difference of the objective below this [g] is not spoken of: a bite is more. */
const leastTold = 1;

/** Share of a life below which what neighbours take there is not spoken of. */
const worthTelling = 0.02;

const terms = ["waste", "qualityLost", "lifeLost", "effort"] as const satisfies readonly (keyof Objective)[];

function placeLine(context: HandoutContext, rival: Alternative, { places, kind }: RivalNames): string {
  const { speaker } = context;
  const name = (id: string): string => places.get(id) ?? plainText(id);
  const values = {
    place: name(rival.place),
    wrap: speaker.say(`wrap.${rival.wrap}`),
    span: spanWords(speaker, rival.life.early, rival.life.late),
    ending: endingWords(context, kind, rival.endedBy),
  };
  if (!rival.ripensIn) return speaker.say("why.elsewhere", values);
  const { place, wrap } = rival.ripensIn;
  const first = { first: name(place), firstWrap: speaker.say(`wrap.${wrap}`) };
  return speaker.say("why.elsewhereRipe", { ...values, ...first });
}

function wrapLine(context: HandoutContext, rival: Alternative, { kind }: RivalNames): string {
  const { speaker } = context;
  const values = {
    wrap: speaker.say(`wrap.${rival.wrap}`),
    span: spanWords(speaker, rival.life.early, rival.life.late),
    ending: endingWords(context, kind, rival.endedBy),
  };
  return rival.ripensIn
    ? speaker.say("why.wrapRipe", { ...values, firstWrap: speaker.say(`wrap.${rival.ripensIn.wrap}`) })
    : speaker.say("why.wrap", values);
}

function groundLine(
  { speaker }: HandoutContext,
  rival: Alternative,
  ground: AlternativeGround,
  { lots }: RivalNames,
): string {
  const named = (ids: readonly string[]): string =>
    speaker.list(ids.slice(0, mostNamed).map((id) => lots.get(id) ?? plainText(id)));
  switch (ground) {
    case "eating spoilt": {
      const effects = rival.effects.map((name) =>
        speaker.say(`item.effect.${name}` as "item.effect.flavour loss"),
      );
      return speaker.say("why.ground.eating spoilt", { effects: speaker.list(effects) });
    }
    case "smell":
      return speaker.say("why.ground.smell", { givers: named(rival.smellsOf) });
    case "harms others":
      return speaker.say("why.ground.harms others", { names: named(rival.harmed.map(({ lot }) => lot)) });
    default:
      return speaker.say(`why.ground.${ground}`);
  }
}

/** What neighbours take there: the worst by name where that was worked out. */
function thereLines(context: HandoutContext, rival: Alternative, { lots }: RivalNames): string[] {
  const { speaker } = context;
  const about = (days: number): string => spanWords(speaker, days, days);
  const worst = rival.neighbourhood?.neighbours[0];
  if (worst) {
    const gas = worst.byEthylene.value >= worst.byVapour.value;
    const span = about(Math.max(worst.byEthylene.value, worst.byVapour.value));
    const name = lots.get(worst.lot) ?? plainText(worst.lot);
    return [speaker.say(gas ? "why.there.gas" : "why.there.damp", { name, span })];
  }
  const lost = rival.lostToNeighbours.value;
  return lost > worthTelling * (rival.life.middle + lost)
    ? [speaker.say("why.there.neighbours", { span: about(lost) })]
    : [];
}

/** What choosing it costs all in all; term by term where that is asked for. */
function costLines({ speaker, units }: HandoutContext, rival: Alternative, full: boolean): string[] {
  if (rival.worseBy.value < leastTold || rival.grounds.includes("no room")) return [];
  const grams = (value: number): string => massWords(speaker, units, value);
  const costs = terms.map((term) => rival.cost[term]);
  // What overflows and what is missed for a day is part of the whole, and told by its ground.
  const rest = rival.worseBy.value - costs.reduce((sum, cost) => sum + cost, 0);
  const { whole, parts } = toldParts(units, rival.worseBy.value, [...costs, rest]);
  if (whole <= 0) return [];
  const told = terms.flatMap((term, index) => {
    const value = parts[index]!;
    if (value === 0) return [];
    return [
      speaker.say(`why.term.${term}.${value > 0 ? "more" : "less"}`, { grams: grams(Math.abs(value)) }),
    ];
  });
  // Waste alone is the whole, and told by it.
  const more = told.length > 1 || parts[terms.indexOf("waste")] === 0;
  return [
    speaker.say("why.costs", { grams: grams(whole) }),
    ...(full && more && told.length > 0 ? [speaker.say("why.terms", { terms: speaker.list(told) })] : []),
  ];
}

/** Another place or wrap in a line: the life there and what speaks against it. `full`: with its cost term by term. */
export function rivalLine(
  context: HandoutContext,
  rival: Alternative,
  names: RivalNames,
  { what, full }: { readonly what: "place" | "wrap"; readonly full: boolean },
): string {
  const head = what === "place" ? placeLine(context, rival, names) : wrapLine(context, rival, names);
  return [
    head,
    ...rival.grounds.map((ground) => groundLine(context, rival, ground, names)),
    ...thereLines(context, rival, names),
    ...costLines(context, rival, full),
  ].join(" ");
}
