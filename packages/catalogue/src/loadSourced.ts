import type { Catalogue } from "./catalogue.js";

let loading: Promise<Catalogue> | undefined;

/** The whole catalogue with the provenance of every figure, as a part of its own that is loaded when somebody first asks where figures come from. */
export function loadSourced(): Promise<Catalogue> {
  loading ??= import("./bundled.js").then(({ catalogue }) => catalogue());
  return loading;
}
