import { judgeAnswerer } from "./answerJudge.js";
import { answerPlan } from "./answerPlan.js";
import type { JudgeRequest } from "./judgeMessages.js";
import type { PlanRequest } from "./planMessages.js";

const judge = judgeAnswerer();

/** One script for plans and for judgements, so that it is fetched and kept once; each desk starts a worker of its own from it. */
addEventListener("message", ({ data }: MessageEvent<PlanRequest | JudgeRequest>) => {
  if ("kind" in data) judge(data, (answer) => postMessage(answer));
  else void answerPlan(data, (answer) => postMessage(answer));
});
