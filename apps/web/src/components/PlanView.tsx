import { type HandoutContext, planView } from "@keepwright/handout";
import type { Lot, LotReason, Plan } from "@keepwright/planner";
import { useMemo } from "react";
import { LifeList } from "./LifeList.js";
import { PlaceCard } from "./PlaceCard.js";
import { WordList } from "./WordList.js";

interface PlanViewProps {
  readonly plan: Plan | undefined;
  readonly lots: readonly Lot[];
  readonly reasons: readonly LotReason[];
  readonly problem: string | undefined;
  readonly working: boolean;
  readonly context: HandoutContext;
}

/** The plan in the order it is used: what to do now, where it goes, what comes later, why. */
export function PlanView({ plan, lots, reasons, problem, working, context }: PlanViewProps) {
  return (
    <section className="plan" aria-labelledby="plan-heading" aria-busy={working}>
      <h2 id="plan-heading">The plan</h2>
      <p role="status" className="plan-status">
        {working
          ? "Working it out …"
          : problem
            ? ""
            : plan
              ? "Worked out."
              : "Type what came home, and the plan appears here."}
      </p>
      {problem && (
        <p role="alert" className="wrong">
          {problem}
        </p>
      )}
      {plan && <PlanSections plan={plan} lots={lots} reasons={reasons} context={context} />}
    </section>
  );
}

type SectionsProps = Pick<PlanViewProps, "lots" | "reasons" | "context"> & { readonly plan: Plan };

function PlanSections({ plan, lots, reasons, context }: SectionsProps) {
  const counted = useMemo(() => new Map(lots.map((lot) => [lot.id, lot])), [lots]);
  const view = useMemo(() => planView(context, plan, { counted }), [context, plan, counted]);
  const { speaker } = context;
  const largest = Math.max(...plan.places.map((place) => place.litres));
  return (
    <>
      <p className="plan-title">{view.title}</p>
      <p className="waste">{view.waste}</p>
      {view.cautions.length > 0 && (
        <WordList heading={speaker.say("heading.cautions")} lines={view.cautions} className="cautions" />
      )}
      <WordList heading={speaker.say("heading.prepare")} lines={view.preparation.map(({ line }) => line)} />
      <h3 id="places">{speaker.say("heading.places")}</h3>
      <div className="places">
        {view.places.map((place) => (
          <PlaceCard key={place.place} place={place} plan={plan} largest={largest} />
        ))}
      </div>
      <WordList
        heading={speaker.say("heading.moves")}
        lines={view.moves.length > 0 ? view.moves.map(({ line }) => line) : [speaker.say("move.none")]}
      />
      <WordList
        heading={speaker.say("heading.eat")}
        lines={[...view.eating.days.map(({ line }) => line), ...view.eating.ready, ...view.eating.left]}
        ordered
      />
      <LifeList
        lives={view.lives}
        reasons={reasons}
        context={context}
        heading={speaker.say("heading.lives")}
        plan={plan}
      />
    </>
  );
}
