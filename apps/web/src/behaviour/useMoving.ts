import type { Judgement } from "@keepwright/planner";
import { createContext, useContext, useMemo, useReducer, useState } from "react";
import { type ChosenAt, type ChosenLots, chosenLots, withChosen } from "../state/chosenArrangement.js";
import { useDesk } from "./desk.js";
import type { JudgementAsked } from "./judgeMessages.js";
import { useJudgement } from "./useJudgement.js";
import type { MadePlan } from "./usePlan.js";
import { useStable } from "./useStable.js";

/** A lot put elsewhere to see what that costs, neither kept nor put back yet. */
export interface Trial {
  readonly lot: string;
  readonly at: ChosenAt;
}

export interface Moving {
  /** The plan as it is to be shown: simulated with what the person put elsewhere, as soon as that is known. */
  readonly shown: MadePlan;
  /** What is shown, set beside the plan as it was made; undefined where nothing was put elsewhere. */
  readonly judgement: Judgement | undefined;
  readonly working: boolean;
  readonly problem: string | undefined;
  readonly trial: Trial | undefined;
  /** Lots that the person keeps elsewhere. */
  readonly kept: ChosenLots;
  /** Something is about to be put elsewhere: what it will be judged beside is made ready meanwhile. */
  readonly prepare: () => void;
  readonly attempt: (trial: Trial) => void;
  readonly keep: () => void;
  readonly putBack: () => void;
  /** Has the plan decide again where a lot lies. */
  readonly release: (lot: string) => void;
}

const nothingKept: ChosenLots = new Map();

/** Lots put elsewhere than the plan has them, judged in a worker; what is kept stays with the person's lines. */
export function useMoving(made: MadePlan): Moving {
  const { haul, worked } = useDesk();
  const [trial, setTrial] = useState<Trial | undefined>();
  const lines = worked?.lines;
  const { chosen } = haul.state;
  const { kitchen } = made.asked;
  const kept = useMemo(() => {
    const found = lines ? chosenLots(chosen, lines, kitchen) : nothingKept;
    return found.size === 0 ? nothingKept : found;
  }, [chosen, lines, kitchen]);
  const [prepared, prepare] = useReducer(() => true, false);
  const moved = trial !== undefined || kept.size > 0;
  const ask = useAsk(made, kept, trial, prepared);
  const { made: judged, working, problem } = useJudgement(ask);
  const judgement = useMemo(
    () => (judged && ask && moved && sameAsked(judged.asked, ask) ? judged.judgement : undefined),
    [judged, ask, moved],
  );
  const shown = useMemo((): MadePlan => {
    if (!judgement) return made;
    return { ...made, plan: judgement.yours, reasons: [] };
  }, [made, judgement]);
  const change = useStable((lot: string, at: ChosenAt | undefined) => {
    const key = lines?.find((line) => line.lot?.id === lot)?.key;
    if (key !== undefined) haul.change({ change: "chosen", key, at });
  });
  const busy = moved && (working || (judgement === undefined && problem === undefined));
  return useMemo(
    () => ({
      shown,
      judgement,
      working: busy,
      problem,
      trial,
      kept,
      prepare,
      attempt: setTrial,
      keep() {
        if (trial) change(trial.lot, trial.at);
        setTrial(undefined);
      },
      putBack: () => setTrial(undefined),
      release: (lot: string) => change(lot, undefined),
    }),
    [shown, judgement, busy, problem, trial, kept, change],
  );
}

/** What to judge; nothing while all lies as planned, unless it is to be made ready. How good the plan is proved to be comes later and changes nothing in it. */
function useAsk(
  made: MadePlan,
  kept: ChosenLots,
  trial: Trial | undefined,
  prepared: boolean,
): JudgementAsked | undefined {
  const { asked, plan, number } = made;
  // The number stands for the plan: how good it is proved to be comes later, and is no other question.
  return useMemo(() => {
    const all = trial ? new Map([...kept, [trial.lot, trial.at]]) : kept;
    if (all.size === 0 && !prepared) return undefined;
    const { proof: _, ...bare } = plan;
    return { ...asked, kind: "judge", arrangement: withChosen(plan, all), plan: bare, alone: true };
  }, [number, kept, trial, prepared]);
}

const sameAsked = (one: JudgementAsked, other: JudgementAsked): boolean =>
  JSON.stringify([one.arrangement, one.plan]) === JSON.stringify([other.arrangement, other.plan]);

const MovingContext = createContext<Moving | undefined>(undefined);
export const MovingProvider = MovingContext.Provider;

/** What was put elsewhere; undefined where a plan is only shown. */
export const useMoved = (): Moving | undefined => useContext(MovingContext);
