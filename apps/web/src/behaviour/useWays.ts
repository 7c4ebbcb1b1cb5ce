import type { TwoWays } from "@keepwright/planner";
import { freshDesk } from "./freshDesk.js";
import { startWorker } from "./startWorker.js";
import { type Asking, type AskingHow, useAsking } from "./useAsking.js";
import type { WaysAnswer, WaysAsked } from "./waysMessages.js";

export type WaysState = Asking<TwoWays>;

/** Lays the haul two ways in a worker of its own whenever what is asked changes; the last answer stays until the next is there. */
export const useWays = (asked: WaysAsked | undefined): WaysState => useAsking(asked, how);

const how: AskingHow<WaysAsked, WaysAnswer, TwoWays> = {
  open: (answered) =>
    freshDesk(
      {
        start: startWorker,
        isLast: (answer) => answer.kind === "problem" || answer.last,
        broken: (message): WaysAnswer => ({ kind: "problem", message }),
      },
      answered,
    ),
  pause: 0,
  after: (_, answer) =>
    answer.kind === "problem"
      ? { made: undefined, problem: answer.message, findings: answer.findings, working: false }
      : { made: answer.made, problem: undefined, working: !answer.last },
};
