import { type HandoutContext, type PlanParts, proofLines } from "@keepwright/handout";
import { daysBetween } from "@keepwright/quantities";
import { memo, type ReactNode, useMemo } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { useNarrow } from "../../behaviour/useNarrow.js";
import type { MadePlan } from "../../behaviour/usePlan.js";
import { useToday } from "../../behaviour/useToday.js";
import { lineKeys } from "../../state/lineKeys.js";
import { mostOpen } from "../../state/manyThings.js";
import { liesAlready, type NowTask, nowTasks } from "../../state/nowTasks.js";
import type { ReadLine } from "../../state/readLots.js";
import { useWords } from "../../words/words.js";
import { Cautions } from "../Cautions.js";
import { Days } from "./Days.js";
import { DoNow, LeaveAsItIs } from "./DoNow.js";
import { FoldedPlaces } from "./foldedPlaces.js";
import { KitchenDrawing } from "./KitchenDrawing.js";
import { LifeList } from "./LifeList.js";
import { PassedDays } from "./PassedDays.js";
import { type PageParts, partsOf } from "./partsOf.js";
import { SinceThen } from "./SinceThen.js";

/** A plan is drawn in so many pieces, one after another: what is urgent, what to do now, the places, the days, how long each lasts, the rest. */
export const piecesOfPlan = 6;

interface PlanSectionsProps {
  /** The plan as each piece shows it; none where that piece has not come yet. */
  readonly drawn: readonly (MadePlan | undefined)[];
  readonly context: HandoutContext;
  /** What is said of it besides, below what is urgent. */
  readonly children: ReactNode;
}

/**
 * The sections of a plan. Each makes its own words, so that the page answers a letter or a touch between two of them; and is drawn again
 * only when what it shows has changed.
 */
export function PlanSections({ drawn, context, children }: PlanSectionsProps) {
  const [urgent, now, where, days, lives, rest] = drawn;
  return (
    <>
      {urgent && <Urgent parts={partsOf(context, urgent)} />}
      {children}
      {urgent && <SinceThen made={urgent} />}
      {now && <NowAndWhere now={now} where={where} context={context} />}
      {days && (
        <DayLine
          parts={partsOf(context, days)}
          past={days.past}
          lots={days.plan.lots.length}
          context={context}
        />
      )}
      {lives && <Lives parts={partsOf(context, lives)} context={context} />}
      {rest && <LaterCautions parts={partsOf(context, rest)} context={context} />}
      {rest && <Worth parts={partsOf(context, rest)} plan={rest.plan} context={context} />}
    </>
  );
}

interface PartProps {
  readonly parts: PlanParts;
}
interface SpokenPartProps extends PartProps {
  readonly context: HandoutContext;
}

const Urgent = memo(function Urgent({ parts }: PartProps) {
  const say = useWords();
  return (
    <>
      <p className="plan-title">{parts.title()}.</p>
      <Cautions heading={say("plan.pressing")} lines={parts.pressing()} pressing />
    </>
  );
});

type TasksProps = PartProps &
  Pick<MadePlan, "asked"> & { readonly plan: Pick<MadePlan["plan"], "lots" | "vents"> };

interface MadeTasks extends Pick<MadePlan, "asked"> {
  readonly lines: readonly ReadLine[] | undefined;
  readonly tasks: readonly NowTask[];
}

/** What to do now is told in two places, and made once. */
const madeTasks = new WeakMap<PlanParts, MadeTasks>();

/** What to do now, with what of it is ticked off where the places are drawn. */
function useTasks({ parts, plan, asked }: TasksProps): readonly NowTask[] {
  const lines = useDesk().worked?.lines;
  return useMemo(() => {
    const before = madeTasks.get(parts);
    if (before && before.lines === lines && before.asked === asked) return before.tasks;
    const view = { places: parts.places(), preparation: parts.preparation() };
    const lineOf = lineKeys(plan, lines ?? [], asked.lines);
    const tasks = nowTasks({ view, kitchen: asked.kitchen, lineOf, done: liesAlready(plan, asked) });
    madeTasks.set(parts, { lines, asked, tasks });
    return tasks;
  }, [parts, plan.lots, asked, lines]);
}

interface NowAndWhereProps {
  readonly now: MadePlan;
  readonly where: MadePlan | undefined;
  readonly context: HandoutContext;
}

function NowAndWhere({ now, where, context }: NowAndWhereProps) {
  const parts = partsOf(context, now);
  return (
    <div className="now-and-where">
      <Now parts={parts} plan={now.plan} asked={now.asked} />
      {where && (
        <Where parts={partsOf(context, where)} plan={where.plan} asked={where.asked} context={context} />
      )}
      <Leave parts={parts} context={context} />
    </div>
  );
}

const Now = memo(function Now({ parts, plan, asked }: TasksProps & { readonly parts: PageParts }) {
  const tasks = useTasks({ parts, plan, asked });
  return <DoNow tasks={tasks} marks={parts.marks} ticksAtPlaces={useNarrow()} />;
});

type WhereProps = SpokenPartProps & Pick<MadePlan, "plan" | "asked"> & { readonly parts: PageParts };

const Where = memo(function Where({ parts, plan, asked, context }: WhereProps) {
  const tasks = useTasks({ parts, plan, asked });
  const folded = useNarrow();
  return (
    <FoldedPlaces value={folded ? tasks : undefined}>
      <KitchenDrawing
        heading={context.speaker.say("heading.places")}
        lots={plan.lots}
        drawn={plan.places}
        kitchen={asked.kitchen}
        places={parts.places()}
        context={context}
        marks={parts.marks}
      />
    </FoldedPlaces>
  );
});

const Leave = memo(function Leave({ parts, context }: SpokenPartProps) {
  return <LeaveAsItIs heading={context.speaker.say("heading.leave")} tasks={parts.preparation()} />;
});

type DayLineProps = SpokenPartProps &
  Pick<MadePlan, "past"> & { readonly parts: PageParts; readonly lots: number };

const DayLine = memo(function DayLine({ parts, past, lots, context }: DayLineProps) {
  const say = useWords();
  const many = useNarrow() || lots > mostOpen;
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
      passedDays={past ? daysBetween(past.from, today) : 0}
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
