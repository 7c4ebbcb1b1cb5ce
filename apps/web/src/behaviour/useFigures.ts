import { type Catalogue, loadFigures } from "@keepwright/catalogue";
import { useEffect, useState } from "react";

export interface Figures {
  /** What is known of every kind; nothing while it is on its way. */
  readonly catalogue: Catalogue | undefined;
  /** The part could not be loaded: the page was opened without its files, or the connection broke. */
  readonly failed: boolean;
}

/** The catalogue's figures, loaded after the page is there to type in: the first screen needs names only. */
export function useFigures(): Figures {
  const [figures, setFigures] = useState<Figures>({ catalogue: undefined, failed: false });
  useEffect(() => {
    let wanted = true;
    loadFigures().then(
      (catalogue) => wanted && setFigures({ catalogue, failed: false }),
      () => wanted && setFigures({ catalogue: undefined, failed: true }),
    );
    return () => {
      wanted = false;
    };
  }, []);
  return figures;
}
