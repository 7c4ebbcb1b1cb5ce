import { paperFiles } from "virtual:paper-files";
import { useEffect, useRef, useState } from "react";
import { saveFile } from "../../components/settings/saveFile.js";
import type { PaperAnswer, PaperAsked, PaperQuestion } from "./paperMessages.js";

/** What is told of the page that was asked for last. */
export type PaperState =
  | { readonly kind: "nothing" | "working" }
  | { readonly kind: "saved"; readonly name: string; readonly pages: number }
  | Exclude<PaperAnswer, { readonly kind: "set" }>;

export interface Paper {
  readonly state: PaperState;
  /** Sets something and hands it to the browser as a file of that name. */
  readonly make: (asked: PaperAsked, name: string) => void;
}

const addresses = () =>
  Object.fromEntries(
    Object.entries(paperFiles).map(([key, file]) => [key, new URL(file, document.baseURI).href]),
  ) as PaperQuestion["files"];

/** Sets pages in a worker, which stays for the next one until what uses it is closed: it takes a while to begin. */
export function usePaper(): Paper {
  const [state, setState] = useState<PaperState>({ kind: "nothing" });
  const worker = useRef<Worker | undefined>(undefined);
  const last = useRef(0);
  const end = () => {
    worker.current?.terminate();
    worker.current = undefined;
  };
  useEffect(() => end, []);
  const make = (asked: PaperAsked, name: string) => {
    const number = ++last.current;
    worker.current ??= new Worker(new URL("./paperWorker.ts", import.meta.url), { type: "module" });
    const own = worker.current;
    own.onmessage = ({ data }: MessageEvent<PaperAnswer>) => {
      if (data.number !== last.current) return;
      if (data.kind === "set") saveFile(name, data.bytes, "application/pdf");
      setState(data.kind === "set" ? { kind: "saved", name, pages: data.pages } : data);
    };
    own.onerror = ({ message }) => {
      end();
      // A worker whose own script cannot be had tells nothing.
      setState(message ? { number, kind: "wrong", message } : { number, kind: "unreachable" });
    };
    setState({ kind: "working" });
    own.postMessage({ number, asked, files: addresses() } satisfies PaperQuestion);
  };
  return { state, make };
}
