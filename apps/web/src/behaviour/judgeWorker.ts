import { judgeAnswerer } from "./answerJudge.js";
import type { JudgeRequest } from "./judgeMessages.js";

const answer = judgeAnswerer();

addEventListener("message", ({ data }: MessageEvent<JudgeRequest>) => {
  answer(data, (one) => postMessage(one));
});
