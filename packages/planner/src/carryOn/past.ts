import { type LotOutcome, simulate } from "@keepwright/physics";
import type { Choice, Part, ProgrammeStay } from "../problem/programme.js";
import { simulationOf } from "../problem/simulationOf.js";
import type { BoundHappened, BoundHappening } from "./bindHappened.js";
import type { Previous } from "./previous.js";

/** How it went with the parts of a plan until a day: where each lay and lies, and what the simulation makes of it. */
export interface Past {
  readonly choice: Choice;
  readonly outcomes: readonly LotOutcome[];
  readonly parts: readonly PastPart[];
}

export interface PastPart {
  readonly lies: Pick<ProgrammeStay, "place" | "wrap">;
  /** Stays it still has before it, and the day [d from the plan's first] or ripeness that ends the one it is in. */
  readonly until: ProgrammeStay["until"];
  readonly next: readonly ProgrammeStay[];
}

/** Which of its stays a part is in on a day. */
const stayOn = ({ stayStarts }: LotOutcome, day: number): number =>
  stayStarts.findLastIndex((start) => start <= day);

/** What is said of where a part lies, of the last that says it. */
const saidOf = (happenings: readonly BoundHappening[], part: number): BoundHappening | undefined =>
  happenings.findLast(
    ({ parts, place, said }) => parts.includes(part) && (place !== undefined || said.wrap !== undefined),
  );

interface Moved {
  /** How it lay in the past. */
  readonly stays: readonly ProgrammeStay[];
  readonly now: PastPart;
}

/** How a part lay, and lies, by what is said of it: moved on a day; never moved on, though the plan had meant it; or moved just now. */
function moved(part: Part, outcome: LotOutcome, said: BoundHappening, day: number): Moved {
  const { stays } = part.programme;
  const current = stayOn(outcome, day);
  const here = stays[current]!;
  const place = said.place ?? here.place;
  const wrap = said.said.wrap ?? here.wrap;
  const lies = { place, wrap };
  const asSaid = (stay: ProgrammeStay) => stay.place === place && (said.said.wrap ?? stay.wrap) === stay.wrap;
  const earlier = stays.slice(0, current).findLastIndex(asSaid);
  if (said.sinceDay === undefined && !asSaid(here) && earlier >= 0) {
    const stayed = stays.slice(0, earlier + 1).with(earlier, { ...stays[earlier]!, until: "never" });
    return {
      stays: stayed,
      now: { lies: stays[earlier]!, until: stays[earlier]!.until, next: stays.slice(earlier + 1) },
    };
  }
  if (asSaid(here) && said.sinceDay === undefined) {
    return { stays, now: { lies: here, until: here.until, next: stays.slice(current + 1) } };
  }
  const now: PastPart = { lies, until: "never", next: [] };
  const since = said.sinceDay ?? day;
  if (since >= day) return { stays, now };
  const last: ProgrammeStay = { ...lies, until: "never" };
  const before = stays.filter((_, stay) => outcome.stayStarts[stay]! < since);
  if (before.length === 0) return { stays: [last], now };
  const cutShort = before.with(before.length - 1, { ...before.at(-1)!, until: { day: since } });
  return { stays: [...cutShort, last], now };
}

/** A plan simulated until a day (at least one, so that there is something to simulate), as it went. */
export function pastOf({ problem, choice }: Previous, happened: BoundHappened, day: number): Past {
  const horizonDays = Math.max(1, day);
  const run = (of: Choice) => simulate({ ...simulationOf(problem, of), horizonDays }).lots;
  const planned = run(choice);
  const went = choice.parts.map((part, index): Moved => {
    const said = saidOf(happened.happenings, index);
    if (said) return moved(part, planned[index]!, said, day);
    const { stays } = part.programme;
    const current = stayOn(planned[index]!, day);
    const here = stays[current]!;
    return { stays, now: { lies: here, until: here.until, next: stays.slice(current + 1) } };
  });
  const parts = choice.parts.map((part, index) => ({
    ...part,
    programme: { ...part.programme, stays: went[index]!.stays },
  }));
  const past = { ...choice, parts };
  return { choice: past, outcomes: run(past), parts: went.map(({ now }) => now) };
}
