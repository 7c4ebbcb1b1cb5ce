import type { CarriedOn, ChangeReason, LotChange } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { massWords } from "../words/amounts.js";
import { dayWords, fullDateWords } from "../words/dates.js";
import { plainText } from "../words/plainText.js";
import { isCold } from "./coldPlaces.js";
import type { HandoutContext } from "./context.js";
import { kindName } from "./kindNames.js";
import { placeNames, wholeLotNames } from "./names.js";
import { type PlanSurroundings, type PlanView, planView } from "./planView.js";
import { takenWords } from "./takenWords.js";

/** A plan carried on, in rows and words: what changes first, then the plan. */
export interface CarriedOnView {
  readonly title: string;
  readonly summary: string;
  /** What may no longer be eaten: it is told of in no other list. */
  readonly throwAway: readonly string[];
  /** What moves, is eaten on other days, or is new, each with why; then vents. */
  readonly changes: readonly string[];
  readonly staying: readonly string[];
  readonly gone: readonly string[];
  /** What was begun and so is cut, with what else changes about it. */
  readonly begun: readonly string[];
  readonly plan: PlanView;
}

interface Naming {
  readonly context: HandoutContext;
  readonly told: CarriedOn;
  readonly names: ReadonlyMap<string, string>;
  readonly places: ReadonlyMap<string, string>;
}

const nameOf = ({ context, names }: Naming, { lot, commodity }: Pick<LotChange, "lot" | "commodity">) =>
  names.get(lot ?? "") ?? kindName(context, commodity);

const placeName = ({ places }: Naming, id: string): string => places.get(id) ?? plainText(id);

function namesOfLots(naming: Naming, ids: readonly string[]): string {
  const { haul } = naming.told;
  return naming.context.speaker.list(
    ids.map((id) =>
      nameOf(naming, { lot: id, commodity: haul.lots.find((lot) => lot.id === id)?.commodity ?? id }),
    ),
  );
}

/** A number of days or portions as it is told: whole, at least one. */
const whole = (value: number): number => Math.max(1, Math.round(value));

function reasonWords(naming: Naming, reason: ChangeReason, commodity: string): string {
  const { speaker, units } = naming.context;
  switch (reason.because) {
    case "eaten":
    case "thrown out":
    case "given away":
    case "frozen":
      return speaker.say(`carryOn.gone.${reason.because}`);
    case "ripe sooner":
    case "ripe later":
    case "ends sooner":
    case "keeps longer":
    case "lasts longer there":
      return speaker.say(`carryOn.because.${reason.because}`, { count: whole(reason.days) });
    case "more left":
    case "less left":
      return speaker.say(`carryOn.because.${reason.because}`, { count: whole(reason.portions) });
    case "room taken": {
      const place = placeName(naming, reason.place);
      return reason.lots.length > 0
        ? speaker.say("carryOn.because.room taken", { place, names: namesOfLots(naming, reason.lots) })
        : speaker.say("carryOn.because.room gone", { place });
    }
    case "usual kind":
      return speaker.say("carryOn.because.usual kind", {
        word: plainText(reason.word),
        name: kindName(naming.context, commodity),
        kinds: reason.kinds.map((kind) => kindName(naming.context, kind)).join(", "),
      });
    case "room free":
      return speaker.say("carryOn.because.room free", { place: placeName(naming, reason.place) });
    case "beside": {
      const names = namesOfLots(naming, reason.lots);
      return speaker.say("carryOn.because.beside", { names, count: whole(reason.days) });
    }
    case "others to eat":
      return speaker.say("carryOn.because.others to eat", { names: namesOfLots(naming, reason.lots) });
    case "better for the rest": {
      const grams = massWords(speaker, units, reason.gain.value);
      return speaker.say("carryOn.because.better for the rest", { grams });
    }
    default:
      return speaker.say(`carryOn.because.${reason.because}`);
  }
}

function mealsWords({ context: { speaker }, told }: Naming, meals: LotChange["meals"]["now"]): string {
  if (meals.length === 0) return speaker.say("carryOn.noDay");
  return speaker.list(
    meals.map(({ day, portions }) =>
      speaker.say("carryOn.onDay", { date: dayWords(speaker, addDays(told.plan.from, day)), portions }),
    ),
  );
}

function changeLine(naming: Naming, change: LotChange): string {
  const { speaker } = naming.context;
  const name = speaker.capital(nameOf(naming, change));
  const reasons = change.reasons.map((reason) => reasonWords(naming, reason, change.commodity)).join(" ");
  const place = (id: string) => speaker.say("place.quoted", { place: placeName(naming, id) });
  const [to] = change.to;
  const values = {
    name,
    reasons,
    from: placeName(naming, change.from?.place ?? ""),
    to: placeName(naming, to?.place ?? ""),
    wrap: speaker.say(`wrap.${to?.wrap ?? "none"}`),
  };
  const places = speaker.list(change.to.map((one) => place(one.place)));
  if (change.change === "new")
    return change.to.length > 1
      ? speaker.say("carryOn.newParted", { name, places, reasons })
      : speaker.say("carryOn.new", values);
  if (change.change === "other days") {
    const now = mealsWords(naming, change.meals.now);
    return speaker.say("carryOn.days", {
      name,
      reasons,
      now,
      before: mealsWords(naming, change.meals.before),
    });
  }
  if (change.to.length > 1)
    return speaker.say("carryOn.parted", { name, from: values.from, places, reasons });
  if (change.change === "moves as planned") return speaker.say("carryOn.planned", values);
  return speaker.say(to?.place === change.from?.place ? "carryOn.rewrap" : "carryOn.moves", values);
}

/** Lists of a plan carried on: each lot stands in one of them, the first that concerns it. */
interface Lists {
  readonly throwAway: readonly LotChange[];
  readonly begun: readonly LotChange[];
  readonly changes: readonly LotChange[];
  readonly staying: readonly LotChange[];
  readonly gone: readonly LotChange[];
}

const order: readonly LotChange["change"][] = ["moves", "moves as planned", "new", "other days"];

function listsOf({ begun, takenAsCut, changes }: CarriedOn): Lists {
  const cut = new Set([...takenAsCut.map(({ lot }) => lot), ...begun]);
  const of = (kind: LotChange["change"]) => changes.filter(({ change }) => change === kind);
  const isBegun = ({ lot, change }: LotChange) =>
    change !== "throw away" && change !== "gone" && cut.has(lot ?? "");
  const rest = (kind: LotChange["change"]) => of(kind).filter((change) => !isBegun(change));
  return {
    throwAway: of("throw away"),
    begun: changes.filter(isBegun),
    changes: order.flatMap(rest),
    staying: rest("stays"),
    gone: of("gone"),
  };
}

const takenKeys = {
  begun: "carryOn.takenAsCut",
  "day not told": "carryOn.cutUndated",
  "lay warm": "carryOn.layWarm",
  "cut today": "carryOn.cutToday",
} as const;

/** What is said of a lot of which some was eaten or where nobody says how it lay, so that the rest is cut; nothing of any other. */
function begunWords(naming: Naming, change: LotChange): string[] {
  const { speaker } = naming.context;
  const name = nameOf(naming, change);
  const taken = naming.told.takenAsCut.find(({ lot }) => lot === change.lot);
  if (taken) {
    const date = dayWords(speaker, taken.date);
    const place = placeName(naming, taken.place ?? "");
    const cold = naming.told.plan.places.some(isCold);
    const key = taken.because === "begun" && !cold ? "carryOn.takenAsCutOut" : takenKeys[taken.because];
    return [speaker.say(key, { name: speaker.capital(name), date, place })];
  }
  const begun = naming.told.begun.includes(change.lot ?? "");
  return begun ? [speaker.say("carryOn.begun", { name, title: speaker.capital(name) })] : [];
}

/** Kinds of which some is thrown away and some is kept: it must be clear which. */
function twofoldKinds({ told }: Naming, away: readonly LotChange[]): string[] {
  const cut = new Set(told.haul.lots.filter(({ form }) => form === "cut").map(({ id }) => id));
  const kept = told.changes.filter(({ lot, change }) => change !== "throw away" && cut.has(lot ?? ""));
  const kinds = away.map(({ commodity }) => commodity);
  return [...new Set(kinds)].filter((kind) => kept.some(({ commodity }) => commodity === kind));
}

function throwAwayLines(naming: Naming, lots: readonly LotChange[]): string[] {
  const { speaker } = naming.context;
  if (lots.length === 0) return [];
  const names = speaker.list(lots.map((change) => nameOf(naming, change)));
  return [
    speaker.say("caution.safe-time-past", { names }),
    ...twofoldKinds(naming, lots).map((kind) =>
      speaker.say("carryOn.whichIsMeant", { name: kindName(naming.context, kind) }),
    ),
    ...lots.flatMap((change) => begunWords(naming, change)),
  ];
}

function begunLine(naming: Naming, change: LotChange): string {
  const changed = change.change === "stays" ? [] : [changeLine(naming, change).trim()];
  return [...begunWords(naming, change), ...changed].join(" ");
}

function changeLines(naming: Naming, lots: readonly LotChange[]): string[] {
  const { speaker } = naming.context;
  return [
    ...lots.map((change) => changeLine(naming, change).trim()),
    ...naming.told.vents.map(({ place, to }) => {
      const setting = speaker.say(`carryOn.setting.${to}`);
      return speaker.say("carryOn.vent", { place: placeName(naming, place), setting });
    }),
  ];
}

function stayingLines(naming: Naming, lots: readonly LotChange[]): string[] {
  const { speaker } = naming.context;
  const names = speaker.list(lots.map((change) => nameOf(naming, change)));
  return lots.length === 0 ? [] : [speaker.capital(speaker.say("carryOn.stays", { names }))];
}

/** What is gone, each with what became of it; then what was frozen, given away or thrown out of what is still there, or what went in more ways than one. */
function goneLines(naming: Naming, gone: readonly LotChange[]): string[] {
  const { speaker } = naming.context;
  const oneWay = gone.filter(({ taken = [] }) => taken.length < 2);
  const lines = oneWay.map((change) => {
    const reason = change.reasons.map((one) => reasonWords(naming, one, change.commodity)).join(" ");
    return speaker.say("carryOn.gone", { name: speaker.capital(nameOf(naming, change)), reason });
  });
  const others = naming.told.changes.filter((change) => !oneWay.includes(change));
  return [...lines, ...takenWords(naming.context, others, (change) => nameOf(naming, change))];
}

/** Turns a plan that was carried on into rows and words. Computes nothing about produce. */
export function carriedOnView(
  context: HandoutContext,
  told: CarriedOn,
  around: PlanSurroundings = {},
): CarriedOnView {
  const { speaker } = context;
  const names = wholeLotNames(context, told.plan);
  const naming: Naming = { context, told, names, places: placeNames(context, told.plan) };
  const lists = listsOf(told);
  const changes = changeLines(naming, lists.changes);
  const count = lists.throwAway.length + lists.begun.length + changes.length;
  const date = (day: number) => fullDateWords(speaker, addDays(told.plan.from, day));
  return {
    title: speaker.say("carryOn.title", { from: date(0), to: date(told.plan.days - 1) }),
    summary: count === 0 ? speaker.say("carryOn.nothing") : speaker.say("carryOn.changed", { count }),
    throwAway: throwAwayLines(naming, lists.throwAway),
    changes,
    staying: stayingLines(naming, lists.staying),
    gone: goneLines(naming, lists.gone),
    begun: lists.begun.map((change) => begunLine(naming, change)),
    plan: planView(context, told.plan, around),
  };
}
