import { type HandoutContext, placeNames, wholeLotNames } from "@keepwright/handout";
import type { Kitchen, Plan } from "@keepwright/planner";
import { useMemo } from "react";
import type { Desk } from "../../behaviour/desk.js";
import type { PlanAsked } from "../../behaviour/planMessages.js";
import { letterOf } from "../../drawing/letters.js";
import { lotKeys } from "../../state/lineKeys.js";
import { drawnPlace, type KeyedLot, keyedLots, lyingOf } from "../../state/lying.js";
import type { Lying } from "../../state/plannerState.js";
import type { ReadLine } from "../../state/readLots.js";

/** One thing of the haul, ready to be shown and moved. */
export interface LaidLot extends KeyedLot {
  readonly name: string;
  /** Its letter in the plan's drawing. */
  readonly letter: string;
  /** Room it takes [L]. */
  readonly litres: number;
  readonly said: Lying | undefined;
  /** Id of the place it is drawn in; undefined where nothing is said. */
  readonly at: string | undefined;
}

/** The haul as it lies, and the plan that it is set beside. */
export interface Mine {
  readonly lots: readonly LaidLot[];
  readonly kitchen: Kitchen;
  readonly plan: Plan;
  readonly asked: PlanAsked;
  /** Names of the places by their ids. */
  readonly places: ReadonlyMap<string, string>;
}

interface Named {
  readonly context: HandoutContext;
  readonly plan: Plan;
}

function laidLots(
  { context, plan }: Named,
  lots: readonly KeyedLot[],
  lying: Desk["haul"]["state"]["lying"],
  kitchen: Kitchen,
): LaidLot[] {
  const names = wholeLotNames(context, plan);
  return lots.map(({ key, lot }) => {
    const parts = plan.lots.filter((part) => part.lot === lot.id);
    const said = lyingOf({ lying }, key, kitchen);
    return {
      key,
      lot,
      name: context.speaker.capital(names.get(lot.id) ?? lot.id),
      letter: letterOf(plan.lots.findIndex((part) => part.lot === lot.id)),
      litres: parts.reduce((sum, part) => sum + part.litres, 0),
      said,
      at: drawnPlace(said, lot.id, plan),
    };
  });
}

/** Whether a plan is for the things that stand on the page; what came home since is among them. */
function sameLots(lines: readonly ReadLine[], { lots, since }: PlanAsked): boolean {
  const asked = new Map([...lots, ...(since?.cameHome ?? [])].map((lot) => [lot.id, lot]));
  const here = keyedLots(lines).map(({ lot }) => lot);
  // What came home since has lain since.
  const bare = ({ extraDays: _, ...lot }: PlanAsked["lots"][number]) => JSON.stringify(lot);
  return (
    here.length === asked.size &&
    here.every((lot) => asked.has(lot.id) && bare(asked.get(lot.id)!) === bare(lot))
  );
}

/**
 * Undefined until there is a plan for the things that stand on the page now. While one is made anew because the kitchen or the household changed, things
 * stay beside the last, so that nothing vanishes under the finger.
 */
export function useMine({ haul, worked }: Pick<Desk, "haul" | "worked">): Mine | undefined {
  const { lying } = haul.state;
  const made = worked?.plan.made;
  const context = worked?.context;
  const lines = worked?.lines;
  const fits = made !== undefined && lines !== undefined && sameLots(lines, made.first);
  return useMemo(() => {
    if (!fits || !made || !lines || !context) return undefined;
    const { plan, asked } = made;
    const { kitchen } = asked;
    const keyOf = lotKeys(lines, asked.lines);
    const keyed = asked.lots.map((lot) => ({ key: keyOf(lot.id), lot }));
    const lots = laidLots({ context, plan }, keyed, lying, kitchen);
    return { lots, kitchen, plan, asked, places: placeNames(context, plan) };
  }, [fits, made, lines, context, lying]);
}
