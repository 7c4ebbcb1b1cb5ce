import type { TwoWays } from "@keepwright/planner";
import { useEffect, useState } from "react";
import { startWorker } from "./startWorker.js";
import type { WaysAnswer, WaysAsked } from "./waysMessages.js";

export interface WaysState {
  readonly made: TwoWays | undefined;
  /** Why it could not be worked out; empty when the worker stopped without a word. */
  readonly problem: string | undefined;
  readonly working: boolean;
}

const nothing: WaysState = { made: undefined, problem: undefined, working: false };

/** Lays the haul two ways in a worker of its own whenever what is asked changes; the last answer stays until the next is there. */
export function useWays(asked: WaysAsked | undefined): WaysState {
  const [state, setState] = useState(nothing);
  const question = asked === undefined ? undefined : JSON.stringify(asked);
  useEffect(() => {
    if (question === undefined) return;
    setState((before) => ({ ...before, problem: undefined, working: true }));
    const worker = startWorker();
    worker.onmessage = ({ data }: MessageEvent<WaysAnswer>) => {
      if (data.kind === "problem") setState({ ...nothing, problem: data.message });
      else setState({ made: data.made, problem: undefined, working: !data.last });
      if (data.kind === "problem" || data.last) worker.terminate();
    };
    worker.onerror = ({ message }) => setState({ ...nothing, problem: message ?? "" });
    worker.postMessage(JSON.parse(question));
    return () => worker.terminate();
  }, [question]);
  return state;
}
