import type { EatingView, MoveView } from "@keepwright/handout";
import { type CSSProperties, memo, type ReactNode } from "react";
import { useWords } from "../../words/words.js";

interface DaysProps {
  readonly heading: string;
  readonly eating: EatingView;
  readonly moves: readonly MoveView[];
  /** What is wanted for a day, each in a sentence. */
  readonly wishes: readonly string[];
  readonly today: string;
  /** Are there so many things that what the numbers are is told once? */
  readonly many: boolean;
  /** What is eaten over several days once it is cut. */
  readonly cutOpen: readonly string[];
  /** How many days have passed. */
  readonly passedDays: number;
  /** The days before the first of these. */
  readonly passed: ReactNode;
}

/** The days in a line: what is moved and what is eaten on each. Today is marked; what has passed is dimmed and says so. */
export const Days = memo(function Days(props: DaysProps) {
  const { heading, eating, moves, wishes, today, many, cutOpen, passedDays, passed } = props;
  const say = useWords();
  // What is moved only if it is ripe before the day on which it is eaten up has no day of its own.
  const dated = moves.filter(({ when }) => when !== "if ripe before");
  const movesOn = (date: string) => dated.filter((move) => move.date === date);
  const days = eating.days.filter(
    ({ date, away, entries }) => away || entries.length > 0 || date === today || movesOn(date).length > 0,
  );
  const planned = new Set(days.map(({ date }) => date));
  const after = moves.filter((move) => !dated.includes(move) || !planned.has(move.date));
  return (
    <section className="words day-line" aria-labelledby="days-heading">
      <h3 id="days-heading">{heading}</h3>
      {many && <p className="soft">{say("day.portions")}</p>}
      <ol className="days" style={{ "--a-row": daysInRow(days.length + passedDays) } as CSSProperties}>
        {passed}
        {days.map((day) => (
          <Day key={day.date} day={day} moves={movesOn(day.date)} today={today} many={many} />
        ))}
      </ol>
      <div className="beside-days">
        <div>
          <Lines lines={[...wishes, ...after.map(({ line }) => line)]} />
          <Lines lines={eating.ready} className="soft ready" />
        </div>
        <Lines lines={[...eating.left, ...cutOpen]} />
      </div>
    </section>
  );
});

/** As many in a row as a wide window holds with room for words, rows as even as can be. Declared preference, no source. */
const mostInRow = 6;
const daysInRow = (days: number): number => Math.ceil(days / Math.max(1, Math.ceil(days / mostInRow))) || 1;

interface DayProps {
  readonly day: EatingView["days"][number];
  readonly moves: readonly MoveView[];
  readonly today: string;
  readonly many: boolean;
}

function Day({ day, moves, today, many }: DayProps) {
  const say = useWords();
  const isToday = day.date === today;
  const passed = day.date < today;
  const values = { date: day.dateWords };
  return (
    <li
      className={isToday ? "day today" : passed ? "day passed" : "day"}
      aria-current={isToday ? "date" : undefined}
    >
      <h4>{isToday ? say("day.today", values) : passed ? say("day.passed", values) : day.dateWords}</h4>
      <ul>
        {moves.map(({ lot, line }) => (
          <li key={`move ${lot}`} className="move">
            {line}
          </li>
        ))}
        {(many ? day.short : day.entries).map((entry) => (
          <li key={entry}>{entry}</li>
        ))}
        {day.entries.length === 0 && <li className="soft">{day.line}</li>}
      </ul>
    </li>
  );
}

interface LinesProps {
  readonly lines: readonly string[];
  readonly className?: string;
}

function Lines({ lines, className = "soft" }: LinesProps) {
  if (lines.length === 0) return null;
  return (
    <ul className={className}>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
