import type { Catalogue } from "./catalogue.js";

let loading: Promise<Catalogue> | undefined;

/** The same as `figureCatalogue`, as a part of its own that is loaded when first asked for: a page can be there before it. */
export function loadFigures(): Promise<Catalogue> {
  // What completes kinds from their relatives comes with their figures: the first screen does not wait for it.
  loading ??= Promise.all([import("./figures.generated.js"), import("./assembled.js")]).then(
    ([figures, { assembledFigures }]) => assembledFigures(figures),
  );
  return loading;
}
