import { type Catalogue, commodityOf } from "@keepwright/catalogue";
import { produceFromCommodity } from "@keepwright/physics";
import { agreeingPreparation, isTooWarm, type Kitchen } from "@keepwright/planner";
import { type Apart, apartOf } from "./apart.js";
import { cautionsOf } from "./cautionsOf.js";
import type { AnsweredPlace } from "./itemAnswer.js";
import { placesFor } from "./placesFor.js";

/** In which state a kind is asked about. */
export interface AskedState {
  readonly form: "whole" | "cut";
  /** For kinds that ripen and are whole; left out: as it usually comes home. */
  readonly ripeness?: "unripe" | "ripe" | undefined;
}

/** What is known of a kind before anything is worked out. */
export interface AskedBeforehand extends AskedState {
  readonly commodity: string;
  readonly apart: readonly Apart[];
  /** What may have to be done first, by name, wherever it goes; nothing for what is cut already. */
  readonly preparation: readonly string[];
  /** Cautions by name, those that press in this state first. */
  readonly cautions: readonly string[];
}

/**
 * A short answer about one kind: where it belongs in a kitchen, and what it had better not lie beside. What is to be done first agrees with
 * where it goes. Plain data, as it comes from a worker.
 */
export interface AskedAnswer extends AskedBeforehand {
  readonly belongs: AnsweredPlace;
}

const unripe = 0;
const ripe = 1;

/** What only matters once it is cut. */
const ofCut = ["no-refrigerator-for-cut-produce", "cut-produce", "cut-ready-to-eat"];
export const isOfCut = (caution: string): boolean => ofCut.includes(caution);

const inRefrigerator = (kitchen: Kitchen): boolean =>
  kitchen.places.some(({ kind }) => kind.startsWith("refrigerator") || kind === "crisper drawer");

const tooWarm = ({ refrigerators }: Kitchen, catalogue: Catalogue): boolean =>
  refrigerators.some((one) => isTooWarm(one, catalogue));

function cautionsIn(
  cautions: readonly string[],
  { form, limited }: Pick<AskedState, "form"> & { readonly limited: boolean },
  kitchen: Kitchen,
): string[] {
  const cut = cautions.filter((name) => isOfCut(name));
  // A small spot may be cut away from what is firm and whole only.
  const rest = cautions.filter((name) => !isOfCut(name) && !(form === "cut" && name === "mould-firm"));
  const none = limited && !inRefrigerator(kitchen) ? ["no-refrigerator-for-cut-produce"] : [];
  return limited ? [...none, ...cut, ...rest] : [...rest, ...cut];
}

const ripenessAsked = (catalogue: Catalogue, id: string, { form, ripeness }: AskedState): number => {
  const usual = commodityOf(catalogue, id).ripening?.arrives.value ?? ripe;
  const asked = ripeness === undefined ? usual : ripeness === "ripe" ? Math.max(ripe, usual) : unripe;
  return form === "cut" ? Math.max(ripe, asked) : asked;
};

/** Where it belongs in a kitchen, and the best it can have in each sort of place. */
export const askedPlaces = (catalogue: Catalogue, id: string, kitchen: Kitchen, state: AskedState) =>
  placesFor(
    {
      commodity: commodityOf(catalogue, id),
      ripeness: ripenessAsked(catalogue, id, state),
      form: state.form,
    },
    kitchen,
    catalogue,
  );

/** What needs no working out. Throws RangeError when the catalogue has no such kind. */
export function askedBeforehand(
  catalogue: Catalogue,
  id: string,
  kitchen: Kitchen,
  { form, ripeness }: AskedState,
): AskedBeforehand {
  const commodity = commodityOf(catalogue, id);
  const limited = form === "cut" || commodity.controlledAsSold !== undefined;
  return {
    commodity: id,
    form,
    ripeness,
    apart: apartOf(commodity, catalogue),
    preparation: form === "cut" ? [] : commodity.preparation.map((step) => step.do),
    cautions: [
      ...(tooWarm(kitchen, catalogue) ? ["refrigerator-too-warm"] : []),
      ...cautionsIn(cautionsOf(commodity, produceFromCommodity(commodity)), { form, limited }, kitchen),
    ],
  };
}

/** Answers where a kind in some state belongs. Throws RangeError when the catalogue has no such kind; the kitchen's errors as `bindProblem`. */
export function askedAnswer(
  catalogue: Catalogue,
  id: string,
  kitchen: Kitchen,
  state: AskedState,
  { belongs }: Pick<ReturnType<typeof askedPlaces>, "belongs"> = askedPlaces(catalogue, id, kitchen, state),
): AskedAnswer {
  const known = askedBeforehand(catalogue, id, kitchen, state);
  return {
    ...known,
    belongs,
    preparation: agreeingPreparation(
      known.preparation,
      belongs.stays.map(({ wrap, moveWhen }) => ({ wrap, ripensHere: moveWhen === "ripe" })),
    ),
  };
}
