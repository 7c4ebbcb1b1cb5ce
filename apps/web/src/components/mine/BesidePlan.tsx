import { useDesk } from "../../behaviour/desk.js";
import { lotsToPlan } from "../../state/readLots.js";
import { useWords } from "../../words/words.js";

interface BesidePlanProps {
  /** Whether the plan is there that things are set beside. */
  readonly ready: boolean;
  /** What is said where nothing came home yet. */
  readonly noHaul: string;
  readonly waiting: string;
}

/** Why nothing stands beside the plan yet: nothing came home, there is no plan, or it is still being made. */
export function BesidePlan({ ready, noHaul, waiting }: BesidePlanProps) {
  const say = useWords();
  const { worked } = useDesk();
  if (worked !== undefined && lotsToPlan(worked.lines).length === 0) {
    return (
      <p>
        {noHaul} <a href="#/unpack">{say("mine.toUnpack")}</a>
      </p>
    );
  }
  const problem = worked?.plan.problem;
  if (problem !== undefined) {
    return (
      <p role="alert" className="wrong wrong-box">
        {say("plan.problem", { problem: problem || say("plan.stopped") })}
      </p>
    );
  }
  return ready ? null : <p role="status">{waiting}</p>;
}
