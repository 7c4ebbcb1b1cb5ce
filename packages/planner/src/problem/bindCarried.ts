import type { WrapId } from "@keepwright/catalogue";
import { type LotState, stateNames } from "@keepwright/physics";
import type { BoundKitchen } from "./bindKitchen.js";
import type { Carried } from "./carried.js";
import { told } from "./findingCode.js";
import { type Finding, HaulError } from "./inputError.js";
import type { VentSetting } from "./kitchen.js";
import type { Haul, Lot } from "./lot.js";
import type { ProgrammeStay } from "./programme.js";
import { shownValue } from "./schemaFindings.js";

/** Where a lot lies and what is around it. */
export interface Lying {
  /** Index into the problem's places. */
  readonly place: number;
  readonly wrap: WrapId;
}

/** What a lot brings from an earlier plan, as the search and the schedule need it. */
export interface BoundCarried extends Omit<Carried, "state" | "place" | "wrap" | "foreseen"> {
  readonly state: Readonly<LotState>;
  readonly lies: Lying;
  /** What the earlier plan had before it: the rest of this stay, unless its move is due already, and those after it. */
  readonly remainder: readonly ProgrammeStay[];
  /** A text that is equal for equal states. */
  readonly key: string;
}

/** How the kitchen stands when a plan is carried on. */
export interface BoundStanding {
  /** Of each vent that can be set, how it is set; undefined where nobody says. */
  readonly vents: readonly (VentSetting | undefined)[];
  readonly pace: number;
}

type Places = Pick<BoundKitchen, "places" | "vents">;

const indexOfPlace = ({ places }: Places, id: string): number =>
  places.findIndex(({ place }) => place.id === id);

function unknownPlaces(kitchen: Places, lot: Lot): Finding[] {
  if (!lot.carried) return [];
  const named = [lot.carried, ...lot.carried.foreseen].map(({ place }) => place);
  const unknown = named.filter((name) => indexOfPlace(kitchen, name) < 0);
  return [...new Set(unknown)].map((name) => ({
    thing: `lot ${shownValue(lot.id)}`,
    value: `place ${shownValue(name)} is not in the kitchen`,
    remedy: "Give the kitchen the earlier plan was made for.",
    ...told("carried from another kitchen", { id: lot.id, place: shownValue(name) }),
  }));
}

/** Throws HaulError naming every place of what is carried over that the kitchen does not have. */
export function checkCarriedPlaces(kitchen: Places, haul: Haul): void {
  const findings = haul.lots.flatMap((lot) => unknownPlaces(kitchen, lot));
  if (findings.length > 0) throw new HaulError(findings);
}

/** Binds what a lot brings to the places of a kitchen that has them all (`checkCarriedPlaces`). */
export function bindCarried(kitchen: Places, carried: Carried): BoundCarried {
  const { state, place, wrap, foreseen, ...rest } = carried;
  const values = Float64Array.from(stateNames, (name) => state[name]);
  const until = (next: Carried["foreseen"][number] | undefined): ProgrammeStay["until"] =>
    next === undefined ? "never" : next.moveWhen === "ripe" ? "ripe" : { day: next.day ?? 0 };
  const remainder = [{ place, wrap }, ...foreseen].map((stay, index) => ({
    place: indexOfPlace(kitchen, stay.place),
    wrap: stay.wrap,
    until: until(foreseen[index]),
  }));
  const due = ({ until }: ProgrammeStay): boolean =>
    until === "ripe" ? state.ripeness >= 1 : typeof until === "object" && until.day <= 0;
  return {
    ...rest,
    state: values,
    lies: { place: indexOfPlace(kitchen, place), wrap },
    remainder: remainder.slice(remainder.findIndex((stay) => !due(stay))),
    key: values.join(" "),
  };
}

/** How the kitchen stands; undefined where nothing stands from an earlier plan. */
export function bindStanding(kitchen: Places, { standing }: Haul): BoundStanding | undefined {
  if (!standing) return undefined;
  const setting = (place: number): VentSetting | undefined =>
    standing.vents.find((vent) => vent.place === kitchen.places[place]!.place.id)?.setting;
  return { vents: kitchen.vents.map(setting), pace: standing.pace };
}
