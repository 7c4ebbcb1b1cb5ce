import { answerPlan } from "./answerPlan.js";
import type { PlanRequest } from "./planMessages.js";

addEventListener("message", ({ data }: MessageEvent<PlanRequest>) => {
  void answerPlan(data, (answer) => postMessage(answer));
});
