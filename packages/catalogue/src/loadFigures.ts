import { assembledFigures } from "./assembled.js";
import type { Catalogue } from "./catalogue.js";

let loading: Promise<Catalogue> | undefined;

/** The same as `figureCatalogue`, as a part of its own that is loaded when first asked for: a page can be there before it. */
export function loadFigures(): Promise<Catalogue> {
  loading ??= import("./figures.generated.js").then(assembledFigures);
  return loading;
}
