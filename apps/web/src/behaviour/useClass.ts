import { useEffect, useRef, useState } from "react";
import type { ClassAnswer, ClassAsked } from "./classMessages.js";

export interface ClassState {
  readonly answer: ClassAnswer | undefined;
  readonly working: boolean;
  readonly make: (asked: ClassAsked) => void;
}

/** Makes the pages of a class in a worker when it is asked to; the last pages stay until the next are there. */
export function useClass(): ClassState {
  const [answer, setAnswer] = useState<ClassAnswer>();
  const [working, setWorking] = useState(false);
  const worker = useRef<Worker | undefined>(undefined);
  useEffect(() => () => worker.current?.terminate(), []);
  const done = (given: ClassAnswer) => {
    worker.current?.terminate();
    setAnswer(given);
    setWorking(false);
  };
  const make = (asked: ClassAsked) => {
    worker.current?.terminate();
    const own = new Worker(new URL("./classWorker.ts", import.meta.url), { type: "module" });
    worker.current = own;
    own.onmessage = ({ data }: MessageEvent<ClassAnswer>) => done(data);
    // Also where the script cannot be fetched: what the browser says then is no help, and in its own language.
    own.onerror = () => done({ kind: "wrong", message: "" });
    setWorking(true);
    own.postMessage(asked);
  };
  return { answer, working, make };
}
