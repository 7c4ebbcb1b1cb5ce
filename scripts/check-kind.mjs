// Looks one or more kinds over while they are being written: node scripts/check-kind.mjs ID… (all kinds when none is named). Prints every fault of the
// file, what was inferred from relatives, and how hard the guidance is to read (English: school grade, at most 6; Spanish: ease, at least 70).
import { readdirSync, readFileSync } from "node:fs";
import { englishGrade, guidanceTexts, spanishEase } from "./lib/readingLevel.mjs";
import { mustRun, root, toolPath } from "./lib/run.mjs";

const data = `${root}/packages/catalogue/data`;
const dist = new URL("../packages/catalogue/dist/", import.meta.url);
mustRun("Bundling the catalogue", process.execPath, ["scripts/bundle-catalogue.mjs"]);
mustRun("Compiling", process.execPath, [toolPath("typescript/bin/tsc"), "-b", "packages/catalogue"]);
const { bundledData } = await import(new URL("bundled.js", dist).href);
const { loadCatalogue } = await import(new URL("load.js", dist).href);
const { evidenceIn } = await import(new URL("check/evidence.js", dist).href);

const asked = process.argv.slice(2);
const ids = asked.length > 0 ? asked : readdirSync(`${data}/commodities`).map((name) => name.slice(0, -5));
let loaded;
let problems = [];
try {
  // From the files: the bundle keeps guidance apart.
  const commodities = readdirSync(`${data}/commodities`).map((name) =>
    JSON.parse(readFileSync(`${data}/commodities/${name}`, "utf8")),
  );
  loaded = loadCatalogue({ ...bundledData(), commodities });
} catch (error) {
  if (!error.problems) throw error;
  problems = error.problems;
}
const mine = problems.filter((problem) => ids.some((id) => new RegExp(`(^|"| )${id}[": ]`).test(problem)));
for (const problem of mine) console.log(problem);
if (problems.length > mine.length) console.log(`${problems.length - mine.length} faults in other kinds.`);

let unfinished = mine.length > 0;
/** What is said of the guidance's words; whatever is not yet as it must be leaves the whole unfinished. */
function level(kind) {
  const words = kind.guidance?.words;
  if (!kind.guidance || mine.some((problem) => problem.includes("guidance"))) {
    unfinished = true;
    return kind.guidance ? "reading level not measured while its guidance has faults" : "NO GUIDANCE YET";
  }
  const [grade, ease] = [englishGrade(guidanceTexts(words.en)), spanishEase(guidanceTexts(words.es))];
  const tooHard = grade > 6 || ease < 70;
  unfinished ||= tooHard;
  return `English grade ${grade.toFixed(1)}, Spanish ease ${ease.toFixed(0)}${tooHard ? "  TOO HARD" : ""}`;
}

const families = new Map();
for (const file of readdirSync(`${data}/commodities`)) {
  const { family } = JSON.parse(readFileSync(`${data}/commodities/${file}`, "utf8"));
  families.set(family, (families.get(family) ?? 0) + 1);
}

for (const id of ids) {
  const kind = JSON.parse(readFileSync(`${data}/commodities/${id}.json`, "utf8"));
  const inferred = evidenceIn(loaded?.commodities.get(id))
    .filter(([, evidence]) => evidence.source === "keepwright-relatives")
    .map(([path]) => path);
  if (families.get(kind.family) === 1)
    console.log(
      `${id}: no other kind has the family "${kind.family}"; see that it is spelt as the others are.`,
    );
  console.log(
    `${id}: ${level(kind)}${inferred.length > 0 ? `; inferred from relatives: ${inferred.join(", ")}` : ""}`,
  );
}
process.exit(unfinished ? 1 : 0);
