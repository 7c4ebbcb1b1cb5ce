import { judgeAnswerer } from "./answerJudge.js";
import { answerPlan } from "./answerPlan.js";
import { quickAnswers } from "./answerQuickly.js";
import type { JudgeAnswer, JudgeRequest } from "./judgeMessages.js";
import type { PlanAnswer, PlanRequest, QuickMessage } from "./planMessages.js";

const answer = (given: PlanAnswer | JudgeAnswer) => postMessage(given);
const judge = judgeAnswerer();
const quickly = quickAnswers(answer);

/** One script for plans, quick plans and judgements, so that it is fetched and kept once; each desk starts workers of its own from it. */
addEventListener("message", ({ data }: MessageEvent<PlanRequest | QuickMessage | JudgeRequest>) => {
  if ("kind" in data) judge(data, answer);
  else if ("quick" in data) quickly(data);
  else void answerPlan(data, answer);
});
