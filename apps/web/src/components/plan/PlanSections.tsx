import { type HandoutContext, planView } from "@keepwright/handout";
import { type ReactNode, useMemo } from "react";
import { useDesk } from "../../behaviour/desk.js";
import type { MadePlan } from "../../behaviour/usePlan.js";
import { useToday } from "../../behaviour/useToday.js";
import { lineKeys } from "../../state/lineKeys.js";
import { nowTasks } from "../../state/nowTasks.js";
import { useWords } from "../../words/words.js";
import { Cautions } from "../Cautions.js";
import { Days } from "./Days.js";
import { DoNow, LeaveAsItIs } from "./DoNow.js";
import { KitchenDrawing } from "./KitchenDrawing.js";
import { LifeList } from "./LifeList.js";
import { marksOf } from "./marks.js";

interface SectionsProps {
  readonly made: MadePlan;
  readonly context: HandoutContext;
}

/** What was made, in rows and words, and what is to be done about it now. */
function useSections({ made, context }: SectionsProps) {
  const { worked } = useDesk();
  const { plan, asked } = made;
  const view = useMemo(
    () => planView(context, plan, { counted: new Map(asked.lots.map((lot) => [lot.id, lot])) }),
    [context, plan, asked.lots],
  );
  const lineOf = useMemo(() => lineKeys(plan, worked?.lines ?? []), [plan, worked?.lines]);
  const tasks = useMemo(
    () => nowTasks({ view, kitchen: asked.kitchen, lineOf }),
    [view, asked.kitchen, lineOf],
  );
  const marks = useMemo(() => marksOf(plan), [plan]);
  return { view, tasks, marks };
}

/** The sections of a plan; what is said of it besides stands below what is urgent. */
export function PlanSections({ made, context, children }: SectionsProps & { readonly children: ReactNode }) {
  const say = useWords();
  const today = useToday();
  const { plan, asked } = made;
  const { view, tasks, marks } = useSections({ made, context });
  const { speaker } = context;
  const later = view.cautions.filter((line) => !view.pressing.includes(line));
  return (
    <>
      <p className="plan-title">{view.title}.</p>
      <Cautions heading={say("plan.pressing")} lines={view.pressing} pressing />
      {children}
      <div className="now-and-where">
        <DoNow tasks={tasks} marks={marks} />
        <KitchenDrawing
          heading={speaker.say("heading.places")}
          plan={plan}
          kitchen={asked.kitchen}
          places={view.places}
          context={context}
          marks={marks}
        />
        <LeaveAsItIs heading={speaker.say("heading.leave")} tasks={view.preparation} />
      </div>
      <Days
        heading={say("plan.days")}
        eating={view.eating}
        moves={view.moves}
        wishes={view.wishes.map(({ line }) => line)}
        today={today}
      />
      <LifeList heading={speaker.say("heading.lives")} lives={view.lives} />
      <Cautions heading={speaker.say("heading.cautions")} lines={later} />
      {/* Last of all: how much better it could be is known some seconds after the rest, and moves nothing when it comes. */}
      <section className="words worth">
        <h3>{speaker.say("heading.waste")}</h3>
        <p className="waste">{view.waste}</p>
        {view.proof && <p className="proof">{view.proof.join(" ")}</p>}
      </section>
    </>
  );
}
