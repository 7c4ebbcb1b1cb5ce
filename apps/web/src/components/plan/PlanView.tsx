import type { HandoutContext } from "@keepwright/handout";
import { memo } from "react";
import { useInTurn } from "../../behaviour/useInTurn.js";
import { MovingProvider, useMoving } from "../../behaviour/useMoving.js";
import type { MadePlan, PlanState } from "../../behaviour/usePlan.js";
import { useWords } from "../../words/words.js";
import { TakeAlong } from "../paper/TakeAlong.js";
import { WhyOverPlan } from "../why/WhyOverPlan.js";
import { Movable } from "./Movable.js";
import { PlanSections, piecesOfPlan } from "./PlanSections.js";
import { Kept } from "./TrialPanel.js";

interface PlanViewProps {
  readonly state: PlanState;
  readonly context: HandoutContext;
  readonly onAgain: () => void;
}

/** The plan in the order it is used: what is urgent, what to do now beside the places, the days, how long each lasts. */
export function PlanView({ state, context, onAgain }: PlanViewProps) {
  const say = useWords();
  const { made, problem } = state;
  // Announced once the last piece of it is there.
  const drawn = useInTurn(made, piecesOfPlan);
  const working = state.working || drawn.at(-1)?.plan.lots !== made?.plan.lots;
  return (
    <section id="plan" className="plan" aria-labelledby="plan-heading" aria-busy={working} tabIndex={-1}>
      <div className="plan-head">
        <h2 id="plan-heading">{say("plan.heading")}</h2>
        <p role="status" className="plan-status">
          {working
            ? say("plan.working")
            : problem !== undefined
              ? ""
              : made
                ? say("plan.done", { count: made.asked.lots.length })
                : say("plan.waitingForHaul")}
        </p>
      </div>
      {problem !== undefined && (
        <div role="alert" className="wrong-box">
          <p className="wrong">{say("plan.problem", { problem: problem || say("plan.stopped") })}</p>
          <button type="button" onClick={onAgain}>
            {say("plan.again")}
          </button>
        </div>
      )}
      {made && <MadePlanView made={made} drawn={drawn} context={context} />}
    </section>
  );
}

interface MadePlanViewProps {
  readonly made: MadePlan;
  /** The same as each piece of the page shows it so far. */
  readonly drawn: readonly (MadePlan | undefined)[];
  readonly context: HandoutContext;
}

/** The plan that was made, or what the person made of it by putting lots elsewhere. */
const MadePlanView = memo(function MadePlanView({ made, drawn, context }: MadePlanViewProps) {
  const say = useWords();
  const moving = useMoving(made);
  if (moving.waiting) return <p role="status">{say("trial.working")}</p>;
  return (
    <MovingProvider value={moving}>
      <TakeAlong made={moving.shown} context={context} />
      <Movable moving={moving} context={context}>
        <PlanSections drawn={moving.shown === made ? drawn : drawn.map(() => moving.shown)} context={context}>
          <Kept moving={moving} context={context} />
        </PlanSections>
      </Movable>
      <WhyOverPlan made={moving.shown} changed={moving.judgement !== undefined} context={context} />
    </MovingProvider>
  );
});
