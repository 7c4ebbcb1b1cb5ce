import { namesOf, stemKey } from "@keepwright/catalogue";
import { addDays } from "@keepwright/quantities";
import type { BoundLot } from "../problem/bindHaul.js";
import type { PlannedLot } from "../problem/plan.js";
import type { Problem } from "../problem/problem.js";
import { daysBefore } from "../rules/lifeLeft.js";

/** Words of a name that are looked for together at most. */
const longestName = 4;
/** Names that only say in what state it is: that is told in words of its own. */
const ofState = /(^|\s)(with|con|cut|cortad\w*)(\s|$)/i;

const keysOf = (names: readonly string[]): Set<string> => new Set(names.map(stemKey));

/** Its usual names, which say no more than its kind does. */
function usualNames({ names: { en, es } }: BoundLot["commodity"]): string[] {
  const regional = [...(en.regional ?? []), ...(es.regional ?? [])];
  return [en.one, en.many, es.one, es.many, ...regional.flatMap(({ one, many }) => [one, many])];
}

/** The longest name of its kind in what was typed, as it was typed; undefined where that is its usual one, or none. */
export function ownWord({ lot, commodity }: Pick<BoundLot, "lot" | "commodity">): string | undefined {
  const words = (lot.typed ?? "").match(/[\p{L}\p{M}'’-]+/gu) ?? [];
  const known = keysOf(namesOf(commodity).filter((name) => !ofState.test(name)));
  const usual = keysOf(usualNames(commodity));
  for (let length = Math.min(longestName, words.length); length > 0; length--)
    for (let from = 0; from + length <= words.length; from++) {
      const name = words.slice(from, from + length).join(" ");
      const key = stemKey(name);
      if (usual.has(key)) return undefined;
      if (known.has(key) && name.length <= 80) return name;
    }
  return undefined;
}

/** By what a lot is told apart from others of its kind that are in the haul with it; nothing where there are none. */
export function toldApart(problem: Problem, bound: BoundLot): Pick<PlannedLot, "apart"> {
  const { lot, commodity, carried } = bound;
  if (!problem.lots.some((other) => other !== bound && other.commodity.id === commodity.id)) return {};
  const word = ownWord(bound);
  const days = Math.round(daysBefore(bound) + lot.extraDays);
  return {
    apart: {
      ...(word !== undefined && { word }),
      since: addDays(problem.from, -days),
      origin: carried?.origin ?? lot.id,
    },
  };
}
