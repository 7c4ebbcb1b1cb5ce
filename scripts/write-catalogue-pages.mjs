// Writes docs/catalogue/<kind>.html for every kind and docs/catalogue/index.html, from the catalogue and the model as last built (npx tsc -b);
// --check writes nothing and fails, naming them, when pages are stale, missing or left over.
import { catalogue, loadGuidance } from "@keepwright/catalogue";
import { cataloguePages } from "./catalogue-pages/cataloguePages.mjs";
import { bringUpToDate, differences } from "./catalogue-pages/files.mjs";
import { root } from "./lib/run.mjs";

const folder = `${root}/docs/catalogue`;
const [en, es] = await Promise.all([loadGuidance("en"), loadGuidance("es")]);
const pages = cataloguePages(catalogue(), { en, es });

const told = ({ missing, stale, leftOver }) =>
  Object.entries({ missing, stale, "left over": leftOver }).flatMap(([word, names]) =>
    names.map((name) => `docs/catalogue/${name} is ${word}.`),
  );

if (!process.argv.includes("--check")) {
  const { missing, stale, leftOver } = bringUpToDate(folder, pages);
  console.log(
    `Wrote ${missing.length + stale.length} of ${pages.size} pages in docs/catalogue; removed ${leftOver.length} that belong to no kind.`,
  );
} else {
  const faults = told(differences(folder, pages));
  for (const fault of faults) console.error(fault);
  if (faults.length > 0) {
    console.error("Run: npx tsc -b && node scripts/write-catalogue-pages.mjs");
    process.exitCode = 1;
  } else {
    console.log(`${pages.size} pages in docs/catalogue are up to date.`);
  }
}
