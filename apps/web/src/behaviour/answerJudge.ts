import { changedKitchen, explainNamed, improving, type Judged, judging } from "@keepwright/planner";
import {
  ground,
  type ImprovementsAsked,
  type JudgeAnswer,
  type JudgementAsked,
  type JudgeRequest,
} from "./judgeMessages.js";
import { canBeDrawn, plannerRequest, rangeDraws } from "./plannerRequest.js";
import { whatFailed } from "./whatFailed.js";

/**
 * Makes an answerer of questions about how things lie and what would help. It remembers the plan that the last judgement stood beside, so that
 * moving one lot after another asks for no plan again.
 */
export function judgeAnswerer(): (request: JudgeRequest, answer: (answer: JudgeAnswer) => void) => void {
  let remembered: { readonly on: string; readonly judge: (arrangement: unknown) => Judged } | undefined;

  const judge = (asked: JudgementAsked): Judged => {
    const on = ground(asked);
    if (remembered?.on !== on) {
      remembered = {
        on,
        judge: judging({ ...plannerRequest(asked), ...(asked.plan && { plan: asked.plan }) }),
      };
    }
    return remembered.judge(asked.arrangement);
  };

  return (request, answer) => {
    const { number } = request;
    try {
      if (request.kind === "improve") {
        improve(request, (one) => answer({ number, kind: "improving", improving: one }));
        return;
      }
      if (request.kind === "reasons") {
        const { plan, lot } = request;
        answer({ number, kind: "reasons", reasons: explainNamed({ ...plannerRequest(request), plan, lot }) });
        return;
      }
      const { judgement, oneMove, draws } = judge(request);
      answer({ number, kind: "judgement", judgement });
      if (request.alone) {
        answer({ number, kind: "enough" });
        return;
      }
      answer({ number, kind: "one move", oneMove: oneMove() });
      answer(
        canBeDrawn(request)
          ? { number, kind: "draws", draws: draws(rangeDraws) }
          : { number, kind: "enough" },
      );
    } catch (error) {
      answer({ number, kind: "problem", ...whatFailed(error) });
    }
  };
}

function improve(
  asked: ImprovementsAsked,
  answer: (one: Extract<JudgeAnswer, { kind: "improving" }>["improving"]) => void,
): void {
  const request = plannerRequest(asked);
  for (const step of improving(request)) {
    const kitchens = step.improvements.changes.map(({ change }) => changedKitchen(request, change));
    answer({ step, kitchens });
  }
}
