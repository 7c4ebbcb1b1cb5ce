import type { Judgement } from "@keepwright/planner";
import { createContext, useContext, useMemo, useReducer, useRef, useState } from "react";
import {
  type Chosen,
  type ChosenAt,
  chosenOf,
  chosenParts,
  meant,
  withChosen,
} from "../state/chosenArrangement.js";
import { lotKeys } from "../state/lineKeys.js";
import { useDesk } from "./desk.js";
import type { JudgementAsked } from "./judgeMessages.js";
import { useJudgement } from "./useJudgement.js";
import type { MadePlan } from "./usePlan.js";
import { useProblemWords } from "./useProblemWords.js";
import { useStable } from "./useStable.js";

export interface Moving {
  /** The plan as it was made. */
  readonly made: MadePlan;
  /** The plan as it is to be shown: simulated with what the person put elsewhere, as soon as that is known. */
  readonly shown: MadePlan;
  /** Nothing can be shown yet that has what the person keeps elsewhere where it lies. */
  readonly waiting: boolean;
  /** What is shown, set beside the plan as it was made; undefined where nothing was put elsewhere. */
  readonly judgement: Judgement | undefined;
  readonly working: boolean;
  readonly problem: string | undefined;
  /** Something put elsewhere to see what that costs, neither kept nor put back yet. */
  readonly trial: Chosen | undefined;
  /** What the person keeps elsewhere. */
  readonly kept: readonly Chosen[];
  /** Something is about to be put elsewhere: what it will be judged beside is made ready meanwhile. */
  readonly prepare: () => void;
  /** Puts a part of what is shown elsewhere; all of the lot where it is shown in one place. */
  readonly attempt: (part: string, at: ChosenAt) => void;
  readonly keep: () => void;
  readonly putBack: () => void;
  /** Has the plan decide again where something lies, by its key. */
  readonly release: (key: string) => void;
}

const nothingKept: readonly Chosen[] = [];

/** Lots put elsewhere than the plan has them, judged in a worker; what is kept stays with the person's lines. */
export function useMoving(made: MadePlan): Moving {
  const { haul, worked } = useDesk();
  const [trial, setTrial] = useState<Chosen | undefined>();
  const lines = worked?.lines;
  const { chosen } = haul.state;
  const { kitchen } = made.asked;
  const { lots } = made.plan;
  const keyOf = useMemo(() => lotKeys(lines ?? [], made.asked.lines), [lines, made.asked.lines]);
  const kept = useMemo(() => {
    const found = chosenOf(chosen, keyOf, { lots }, kitchen);
    return found.length === 0 ? nothingKept : found;
  }, [chosen, keyOf, lots, kitchen]);
  const [prepared, prepare] = useReducer(() => true, false);
  const moved = trial !== undefined || kept.length > 0;
  const ask = useAsk(made, kept, trial, prepared);
  const judging = useJudgement(ask);
  const { made: judged, working } = judging;
  const problem = useProblemWords(judging);
  const judgement = useMemo(
    () => (judged && ask && moved && sameAsked(judged.asked, ask) ? judged.judgement : undefined),
    [judged, ask, moved],
  );
  const { shown, waiting } = useShown(made, judgement, kept.length > 0 && problem === undefined);
  const change = useStable((key: string, at: ChosenAt | undefined) => {
    haul.change({ change: "chosen", key, at });
  });
  const attempt = useStable((part: string, at: ChosenAt) => {
    const lot = shown.plan.lots.find(({ id }) => id === part)?.lot;
    if (lot === undefined) return;
    const whole = shown.plan.lots.filter((each) => each.lot === lot).length < 2;
    setTrial({ ...meant(made.plan, keyOf, lot, whole ? undefined : part), at });
  });
  const busy = moved && (working || (judgement === undefined && problem === undefined));
  return useMemo(
    () => ({
      made,
      shown,
      waiting,
      judgement,
      working: busy,
      problem,
      trial,
      kept,
      prepare,
      attempt,
      keep() {
        if (trial) change(trial.key, trial.at);
        setTrial(undefined);
      },
      putBack: () => setTrial(undefined),
      release: (key: string) => change(key, undefined),
    }),
    [made, shown, waiting, judgement, busy, problem, trial, kept, change, attempt],
  );
}

/**
 * The plan with what was put elsewhere as soon as it is judged. While it is judged anew, what was shown last stays, where something is kept
 * elsewhere: nothing jumps back to where the plan would have it.
 */
function useShown(made: MadePlan, judgement: Judgement | undefined, holding: boolean) {
  const last = useRef<MadePlan | undefined>(undefined);
  return useMemo(() => {
    const judged = judgement && { ...made, plan: judgement.yours, reasons: [] };
    if (judged || !holding) last.current = judged;
    const shown = judged ?? last.current ?? made;
    return { shown, waiting: holding && shown === made };
  }, [made, judgement, holding]);
}

/** What to judge; nothing while all lies as planned, unless it is to be made ready. How good the plan is proved to be comes later and changes nothing in it. */
function useAsk(
  made: MadePlan,
  kept: readonly Chosen[],
  trial: Chosen | undefined,
  prepared: boolean,
): JudgementAsked | undefined {
  const { asked, plan, number } = made;
  // The number stands for the plan: how good it is proved to be comes later, and is no other question.
  return useMemo(() => {
    const all = chosenParts(trial ? [...kept, trial] : kept);
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
