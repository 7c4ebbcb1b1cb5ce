import type { WrapId } from "@keepwright/catalogue";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { allowedPlaces } from "../rules/cutInRefrigerator.js";
import { suitableWraps } from "../rules/suitableWraps.js";
import { hasSafeTime } from "../rules/underControl.js";
import type { RuledOut } from "./reason.js";

interface Evidence {
  readonly source: string;
  readonly place: string;
  readonly fromMemory: boolean;
}

/** The catalogue's own name for what everybody does and nobody published. */
const commonPractice = "common-practice";

const evidenceOf = (figure: Evidence | undefined): Pick<RuledOut, "evidence"> =>
  figure && figure.source !== commonPractice
    ? { evidence: { source: figure.source, place: figure.place, fromMemory: figure.fromMemory } }
    : {};

/**
 * The rule that keeps a wrap from a lot (rules/suitableWraps, where the reasons are). A glass of water is told of only where the catalogue says no: that an
 * apple does not stand in water goes without saying.
 */
function wrapRule(lot: BoundLot, wrap: WrapId): RuledOut[] {
  const { commodity } = lot;
  if (hasSafeTime(lot)) return wrap === "glass of water" ? [] : [{ wrap, rule: "cut uncovered" }];
  if (wrap !== "glass of water") return [{ wrap, rule: wrap === "damp towel" ? "keep dry" : "must breathe" }];
  const { standsInWater } = commodity;
  return standsInWater ? [{ wrap, rule: "does not stand in water", ...evidenceOf(standsInWater) }] : [];
}

/** Places and wraps of the kitchen that a hard rule leaves out for a lot, before anything is simulated. */
export function ruledOut({ places, kitchen, catalogue }: Problem, lot: BoundLot): RuledOut[] {
  const allowed = allowedPlaces(lot, places);
  const limit = evidenceOf(catalogue.safety.get("refrigerate-cut-within"));
  const suitable = suitableWraps(lot, kitchen, catalogue.wraps);
  return [
    ...places
      .filter((place) => !allowed.includes(place))
      .map(({ place }): RuledOut => ({ place: place.id, rule: "cut out of refrigerator", ...limit })),
    ...[...new Set<WrapId>(["none", ...kitchen.wraps])]
      .filter((wrap) => !suitable.includes(wrap))
      .flatMap((wrap) => wrapRule(lot, wrap)),
  ];
}
