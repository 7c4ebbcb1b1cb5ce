import type { Commodity } from "@keepwright/catalogue";
import type { AnsweredPlace } from "../../answer/itemAnswer.js";
import { effectWords } from "../../view/itemView.js";
import { kitchenWords } from "../../view/ordinaryNames.js";
import type { ClassContext } from "../classContext.js";

/** Why a kind does not go to a place: the first three speak against the place, the others only against its longer life. */
export const passedReasons = ["unripe", "effects", "damp", "late", "hardly", "less good"] as const;
export type PassedReason = (typeof passedReasons)[number];

/** Longer by less than this share of a life is hardly longer [1]: the planner's own bound (`choosing.hardlyMore`). A declared preference, no source. */
const hardly = 0.05;

const isCold = ({ stays }: AnsweredPlace): boolean => /^refrigerator|^crisper/.test(stays[0]!.placeKind);
const days = ({ life }: AnsweredPlace): number => Math.round(life.middle);

/**
 * Why a place is passed over, by the rules by which places are chosen (`keptAlone` of the planner). Nothing where nothing speaks against it and it lasts no
 * longer there, in whole days. What lasts longer without more days weighed by how good it is then to eat is less good meanwhile. An effect that
 * it has where it belongs, too, is no reason.
 */
export function reasonsPassed(
  commodity: Commodity,
  belongs: AnsweredPlace,
  place: AnsweredPlace,
): readonly PassedReason[] {
  const against: PassedReason[] = [];
  if (place.readyOnDay === null && belongs.readyOnDay !== null) against.push("unripe");
  if (place.effects.some((effect) => !belongs.effects.includes(effect))) against.push("effects");
  if (commodity.dryOutOfRefrigerator && isCold(place) && !isCold(belongs)) against.push("damp");
  if (against.length > 0 || days(place) <= days(belongs)) return against;
  if ((place.readyOnDay ?? 0) > (belongs.readyOnDay ?? 0)) return ["late"];
  return [(1 - hardly) * place.life.middle <= belongs.life.middle ? "hardly" : "less good"];
}

const outright: readonly PassedReason[] = ["unripe", "effects", "damp"];

/** Whether it is not advised at all: it is worse to eat there, does not ripen, or lies too damp. */
export const isAgainst = (reasons: readonly PassedReason[]): boolean =>
  reasons.some((reason) => outright.includes(reason));

/** A place with why it is passed over. */
export interface PassedPlace {
  readonly place: AnsweredPlace;
  readonly reasons: readonly PassedReason[];
}

/** The names of places; of all in the refrigerator, where these are the very ones, that one. */
function namesOf({ handout, say }: ClassContext, those: readonly PassedPlace[], all: readonly PassedPlace[]) {
  const { speaker } = handout;
  const coldOnes = all.filter(({ place }) => isCold(place));
  if (those.length > 1 && those.length === coldOnes.length && those.every(({ place }) => isCold(place)))
    return say("slides.elsewhere.refrigerator");
  return speaker.capital(speaker.list(those.map(({ place }) => kitchenWords(handout, place.stays[0]!.name))));
}

/** The reasons in words, a line each, with all the places that one holds for. */
export function reasonLines(context: ClassContext, passed: readonly PassedPlace[]): string[] {
  const { handout, say } = context;
  return passedReasons.flatMap((reason) => {
    const those = passed.filter(({ reasons }) => reasons.includes(reason));
    if (those.length === 0) return [];
    const places = namesOf(context, those, passed);
    if (reason === "late") {
      const least = Math.min(...those.map(({ place }) => place.readyOnDay ?? 0));
      return [say("slides.elsewhere.late", { places, days: least })];
    }
    if (reason !== "effects") return [say(`slides.elsewhere.${reason}`, { places })];
    const effects = [...new Set(those.flatMap(({ place }) => place.effects))];
    return [say("slides.elsewhere.effects", { places, effects: effectWords(handout, { effects }) })];
  });
}
