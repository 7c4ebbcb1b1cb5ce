import { answerAsk } from "./answerAsk.js";
import { judgeAnswerer } from "./answerJudge.js";
import { answerAfterPlan, planAnswerer } from "./answerPlan.js";
import { quickAnswers } from "./answerQuickly.js";
import { answerWays } from "./answerWays.js";
import type { AskAnswer, AskRequest } from "./askMessages.js";
import type { JudgeAnswer, JudgeRequest } from "./judgeMessages.js";
import type { AfterRequest, PlanAnswer, PlanRequest, QuickAnswer, QuickMessage } from "./planMessages.js";
import type { WaysAnswer, WaysAsked } from "./waysMessages.js";

type Asked = PlanRequest | AfterRequest | QuickMessage | JudgeRequest | AskRequest | WaysAsked;

const answer = (given: PlanAnswer | QuickAnswer | JudgeAnswer | AskAnswer | WaysAnswer) => postMessage(given);
const judge = judgeAnswerer();
const planned = planAnswerer();
const quickly = quickAnswers(answer);

/**
 * One script for plans, quick plans, what follows from a plan, judgements, the same food laid two ways and questions about a kind, so that it is fetched and kept once; each desk starts workers of
 * its own from it.
 */
addEventListener("message", ({ data }: MessageEvent<Asked>) => {
  if (!("kind" in data)) {
    if ("quick" in data) quickly(data);
    else if ("plan" in data) void answerAfterPlan(data, answer);
    else planned(data, answer);
  } else if (data.kind === "ask") answer(answerAsk(data));
  else if (data.kind === "two ways") answerWays(data, answer);
  else judge(data, answer);
});
