import { type HandoutContext, type PlanParts, proofLines } from "@keepwright/handout";
import { memo, type ReactNode, useMemo } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { useNarrow } from "../../behaviour/useNarrow.js";
import type { MadePlan } from "../../behaviour/usePlan.js";
import { useToday } from "../../behaviour/useToday.js";
import { lineKeys } from "../../state/lineKeys.js";
import { mostOpen } from "../../state/manyThings.js";
import { liesAlready, type NowTask, nowTasks } from "../../state/nowTasks.js";
import { useWords } from "../../words/words.js";
import { Cautions } from "../Cautions.js";
import { Days } from "./Days.js";
import { DoNow, LeaveAsItIs } from "./DoNow.js";
import { FoldedPlaces } from "./foldedPlaces.js";
import { KitchenDrawing } from "./KitchenDrawing.js";
import { LifeList } from "./LifeList.js";
import { type Marks, marksOf } from "./marks.js";
import { PassedDays } from "./PassedDays.js";
import { type PageParts, partsOf } from "./partsOf.js";
import { SinceThen } from "./SinceThen.js";

interface PlanSectionsProps {
  readonly made: MadePlan;
  readonly context: HandoutContext;
  /** What is said of it besides, below what is urgent. */
  readonly children: ReactNode;
}

/**
 * The sections of a plan. Each makes its own words, so that the page answers a letter or a touch between two of them; and is drawn again
 * only when what it shows has changed.
 */
export function PlanSections({ made, context, children }: PlanSectionsProps) {
  const say = useWords();
  const { plan, asked } = made;
  const parts = partsOf(context, made);
  const { lots } = plan;
  const marks = useMemo(() => marksOf({ lots }), [lots]);
  const many = useNarrow() || lots.length > mostOpen;
  return (
    <>
      <p className="plan-title">{parts.title()}.</p>
      <Cautions heading={say("plan.pressing")} lines={parts.pressing()} pressing />
      {children}
      <SinceThen made={made} />
      <NowAndWhere parts={parts} plan={plan} asked={asked} marks={marks} context={context} />
      <DayLine parts={parts} past={made.past} many={many} context={context} />
      <Lives parts={parts} context={context} />
      <LaterCautions parts={parts} context={context} />
      <Worth parts={parts} plan={plan} context={context} />
    </>
  );
}

interface PartProps {
  readonly parts: PlanParts;
}
interface SpokenPartProps extends PartProps {
  readonly context: HandoutContext;
}
interface MarkedPartProps extends PartProps {
  readonly kitchen: MadePlan["asked"]["kitchen"];
  readonly marks: Marks;
}

type NowProps = PartProps &
  Pick<MadePlan, "asked"> & {
    readonly plan: Pick<MadePlan["plan"], "lots" | "vents">;
    readonly marks: Marks;
  };

/** What to do now, with what of it is ticked off where the places are drawn. */
function useTasks({ parts, plan, asked }: Omit<NowProps, "marks">): readonly NowTask[] {
  const lines = useDesk().worked?.lines;
  return useMemo(() => {
    const view = { places: parts.places(), preparation: parts.preparation() };
    const lineOf = lineKeys(plan, lines ?? [], asked.lines);
    return nowTasks({ view, kitchen: asked.kitchen, lineOf, done: liesAlready(plan, asked) });
  }, [parts, plan.lots, asked, lines]);
}

const NowAndWhere = memo(function NowAndWhere(props: NowProps & Omit<WhereProps, "kitchen">) {
  const { parts, plan, asked, marks, context } = props;
  const tasks = useTasks({ parts, plan, asked });
  const folded = useNarrow();
  return (
    <div className="now-and-where">
      <DoNow tasks={tasks} marks={marks} ticksAtPlaces={folded} />
      <FoldedPlaces value={folded ? tasks : undefined}>
        <Where parts={parts} plan={plan} kitchen={asked.kitchen} marks={marks} context={context} />
      </FoldedPlaces>
      <Leave parts={parts} context={context} />
    </div>
  );
});

type WhereProps = MarkedPartProps & SpokenPartProps & Pick<MadePlan, "plan">;

const Where = memo(function Where({ parts, plan, kitchen, marks, context }: WhereProps) {
  return (
    <KitchenDrawing
      heading={context.speaker.say("heading.places")}
      lots={plan.lots}
      drawn={plan.places}
      kitchen={kitchen}
      places={parts.places()}
      context={context}
      marks={marks}
    />
  );
});

const Leave = memo(function Leave({ parts, context }: SpokenPartProps) {
  return <LeaveAsItIs heading={context.speaker.say("heading.leave")} tasks={parts.preparation()} />;
});

type DayLineProps = SpokenPartProps &
  Pick<MadePlan, "past"> & { readonly parts: PageParts; readonly many: boolean };

const DayLine = memo(function DayLine({ parts, past, many, context }: DayLineProps) {
  const say = useWords();
  const today = useToday();
  const wishes = parts.wishes().map(({ line }) => line);
  const eating = parts.eating();
  return (
    <Days
      heading={say("plan.days")}
      eating={eating}
      moves={parts.moves()}
      wishes={wishes}
      today={today}
      many={many}
      cutOpen={many ? parts.shortCutOpen() : eating.cutOpen}
      passed={past && <PassedDays past={past} on={today} context={context} />}
    />
  );
});

const Lives = memo(function Lives({ parts, context }: SpokenPartProps) {
  return <LifeList heading={context.speaker.say("heading.lives")} lives={parts.lives()} />;
});

const LaterCautions = memo(function LaterCautions({ parts, context }: SpokenPartProps) {
  const pressing = parts.pressing();
  const later = parts.cautions().filter((line) => !pressing.includes(line));
  return <Cautions heading={context.speaker.say("heading.cautions")} lines={later} />;
});

/** Last of all: how much better it could be is known some seconds after the rest, and moves nothing when it comes. */
function Worth({ parts, plan, context }: SpokenPartProps & Pick<MadePlan, "plan">) {
  const proof = proofLines(context, plan);
  return (
    <section className="words worth">
      <h3>{context.speaker.say("heading.waste")}</h3>
      <p className="waste">{parts.waste()}</p>
      {proof && <p className="proof">{proof.join(" ")}</p>}
    </section>
  );
}
