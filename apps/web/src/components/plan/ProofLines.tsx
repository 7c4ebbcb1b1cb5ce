import { type HandoutContext, planView } from "@keepwright/handout";
import type { Plan } from "@keepwright/planner";

interface ProofLinesProps {
  readonly plan: Plan;
  /** What is known of it, in words; undefined where nothing is yet. */
  readonly lines: readonly string[] | undefined;
  readonly proving: boolean;
  readonly context: HandoutContext;
}

/** How much better any plan could be. It comes some seconds after the plan, into room kept for it, and nobody is told. */
export function ProofLines({ plan, lines, proving, context }: ProofLinesProps) {
  if (lines) return <p className="proof">{lines.join(" ")}</p>;
  if (!proving) return null;
  return (
    <p className="proof awaited" aria-hidden="true" style={{ visibility: "hidden" }}>
      {roomFor(context, plan)}
    </p>
  );
}

/** As wide as a digit. */
const figureSpace = "\u2007";

/** Words as long as those that will come, without any figure in them: they are never seen, only their room is taken. */
function roomFor(context: HandoutContext, plan: Plan): string {
  const { total } = plan.objective;
  const proof = { value: total, bound: total, gap: 1, relaxations: 0 };
  const lines = planView(context, { ...plan, proof }).proof ?? [];
  return lines.join(" ").replace(/\d/g, figureSpace);
}
