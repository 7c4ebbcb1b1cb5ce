import { type HandoutContext, planParts } from "@keepwright/handout";
import type { Plan } from "@keepwright/planner";
import { memo, useMemo } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { lineKeys } from "../../state/lineKeys.js";
import { missedKey } from "../../state/sinceThen.js";
import { useWords } from "../../words/words.js";

interface PassedDaysProps {
  /** The plan of the first day. */
  readonly past: Plan;
  /** The day it is now: what was before it has passed. */
  readonly on: string;
  readonly context: HandoutContext;
}

interface PassedThing {
  readonly key: string;
  readonly words: string;
}

/**
 * The days that have passed, with what was to be moved and eaten: taken as done, and marked where it was not, so that the rest is planned from what is really left.
 */
export const PassedDays = memo(function PassedDays({ past, on, context }: PassedDaysProps) {
  const say = useWords();
  const lines = useDesk().worked?.lines;
  const days = useMemo(() => {
    const keyOf = lineKeys(past, lines ?? []);
    const lotKey = (part: string) => keyOf(part).replace(/\/\d+$/, "");
    const parts = planParts(context, past);
    const moves = parts.moves().filter(({ date, when }) => date <= on && when !== "if ripe before");
    return parts
      .eating()
      .days.filter(({ date }) => date < on)
      .map((day) => ({
        ...day,
        things: [
          ...moves
            .filter(({ date }) => date === day.date)
            .map(({ lot, line }) => ({ key: missedKey("move", day.date, keyOf(lot)), words: line })),
          ...day.lots.map(({ lot }, index) => ({
            key: missedKey("eat", day.date, lotKey(lot)),
            words: day.entries[index] ?? "",
          })),
        ],
      }));
  }, [past, on, context, lines]);
  return days.map((day) => (
    <li key={day.date} className="day passed">
      <h4>{say("day.passed", { date: day.dateWords })}</h4>
      <ul>
        {day.things.map((thing) => (
          <li key={thing.key}>
            <Passed thing={thing} />
          </li>
        ))}
        {day.things.length === 0 && <li className="soft">{day.line}</li>}
      </ul>
    </li>
  ));
});

/** Something that was to be done, with a tick that it was. */
function Passed({ thing: { key, words } }: { readonly thing: PassedThing }) {
  const say = useWords();
  const { haul } = useDesk();
  const missed = haul.state.missed.includes(key);
  return (
    <label className={missed ? "passed-thing missed" : "passed-thing"}>
      <input
        type="checkbox"
        checked={!missed}
        onChange={(event) => haul.change({ change: "missed", keys: [key], missed: !event.target.checked })}
      />
      <span>
        {words} {missed && <strong>{say("day.notDone")}</strong>}
      </span>
    </label>
  );
}
