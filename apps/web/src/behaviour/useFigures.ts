import { type Catalogue, catalogueFor, loadFigures } from "@keepwright/catalogue";
import { useEffect, useMemo, useState } from "react";
import type { readLines } from "../state/readLines.js";

const nothing = { catalogue: undefined, read: undefined } as const;

export interface Figures {
  /** What is known of every kind; nothing while it is on its way. */
  readonly catalogue: Catalogue | undefined;
  /** Reads what was typed; it comes with the figures, without which nothing can be read. */
  readonly read: typeof readLines | undefined;
  /** The part could not be loaded: the page was opened without its files, or the connection broke. */
  readonly failed: boolean;
}

/** The catalogue's figures and what reads by them, loaded after the page is there to type in: the first screen needs names only. Words are taken as the readers of the tag mean them. */
export function useFigures(tag: string): Figures {
  const [figures, setFigures] = useState<Figures>({ ...nothing, failed: false });
  useEffect(() => {
    let wanted = true;
    Promise.all([loadFigures(), import("../state/readLines.js")]).then(
      ([catalogue, { readLines: read }]) => wanted && setFigures({ catalogue, read, failed: false }),
      () => wanted && setFigures({ ...nothing, failed: true }),
    );
    return () => {
      wanted = false;
    };
  }, []);
  return useMemo(() => {
    const { catalogue } = figures;
    return catalogue ? { ...figures, catalogue: catalogueFor(catalogue, tag) } : figures;
  }, [figures, tag]);
}
