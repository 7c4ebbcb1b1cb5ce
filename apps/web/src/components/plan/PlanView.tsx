import { type HandoutContext, planView } from "@keepwright/handout";
import { useMemo } from "react";
import type { PlanState } from "../../behaviour/usePlan.js";
import { useWords } from "../../words/words.js";
import { Cautions } from "../Cautions.js";
import { WordList } from "../WordList.js";
import { EatingDays } from "./Days.js";
import { KitchenDrawing } from "./KitchenDrawing.js";
import { LifeList } from "./LifeList.js";
import { Preparation } from "./Preparation.js";
import { ProofLines } from "./ProofLines.js";

interface PlanViewProps {
  readonly state: PlanState;
  readonly context: HandoutContext;
  readonly onAgain: () => void;
}

/** The plan in the order it is used: where each thing goes, what to do now, what comes later, and why. */
export function PlanView({ state, context, onAgain }: PlanViewProps) {
  const say = useWords();
  const { made, problem, working } = state;
  return (
    <section id="plan" className="plan" aria-labelledby="plan-heading" aria-busy={working} tabIndex={-1}>
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
      {problem !== undefined && (
        <div role="alert" className="wrong-box">
          <p className="wrong">{say("plan.problem", { problem: problem || say("plan.stopped") })}</p>
          <button type="button" onClick={onAgain}>
            {say("plan.again")}
          </button>
        </div>
      )}
      {made && <PlanSections made={made} context={context} />}
    </section>
  );
}

interface SectionsProps {
  readonly made: NonNullable<PlanState["made"]>;
  readonly context: HandoutContext;
}

function PlanSections({ made, context }: SectionsProps) {
  const say = useWords();
  const { plan, asked, reasons, proving } = made;
  const view = useMemo(
    () => planView(context, plan, { counted: new Map(asked.lots.map((lot) => [lot.id, lot])) }),
    [context, plan, asked.lots],
  );
  const { speaker } = context;
  const later = view.cautions.filter((line) => !view.pressing.includes(line));
  return (
    <>
      <div className="in-short">
        <p className="plan-title">{view.title}.</p>
        <p className="waste">{view.waste}</p>
        <ProofLines plan={plan} lines={view.proof} proving={proving} context={context} />
      </div>
      <Cautions heading={say("plan.pressing")} lines={view.pressing} pressing />
      <KitchenDrawing
        heading={speaker.say("heading.places")}
        plan={plan}
        kitchen={asked.kitchen}
        places={view.places}
        context={context}
      />
      <div className="now-and-later">
        <Preparation
          tasks={view.preparation}
          nowHeading={speaker.say("heading.prepare")}
          leaveHeading={speaker.say("heading.leave")}
        />
        <div>
          {view.wishes.length > 0 && (
            <WordList heading={speaker.say("heading.wishes")} lines={view.wishes.map(({ line }) => line)} />
          )}
          <WordList
            heading={speaker.say("heading.moves")}
            lines={view.moves.length > 0 ? view.moves.map(({ line }) => line) : [speaker.say("move.none")]}
          />
          <EatingDays heading={speaker.say("heading.eat")} eating={view.eating} />
        </div>
      </div>
      <LifeList
        lives={view.lives}
        reasons={reasons}
        context={context}
        heading={speaker.say("heading.lives")}
        plan={plan}
      />
      <Cautions heading={speaker.say("heading.cautions")} lines={later} />
    </>
  );
}
