import { indexPage, pageName } from "./index.mjs";
import { kindPage } from "./page.mjs";

/**
 * Every page of the catalogue, name of file to text. @param guidance per language, a map from a kind's id to its guidance
 * @param chosen ids of the kinds to write the pages of; all when left out
 */
export function cataloguePages(catalogue, guidance, chosen = [...catalogue.commodities.keys()]) {
  const kinds = chosen.map((id) => catalogue.commodities.get(id));
  const own = (id) => ({ en: guidance.en.get(id), es: guidance.es.get(id) });
  return new Map([
    ["index.html", indexPage(catalogue)],
    ...kinds.map((kind) => [pageName(kind), kindPage(kind, catalogue, own(kind.id))]),
  ]);
}
