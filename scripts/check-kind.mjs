// Prints how hard the guidance of kinds is to read: node scripts/reading-level.mjs [id …]. English: school grade, 6 or below wanted. Spanish: ease, 70 or above.
import { readdirSync, readFileSync } from "node:fs";
import { englishGrade, guidanceTexts, spanishEase } from "./lib/readingLevel.mjs";
import { root } from "./lib/run.mjs";

const folder = `${root}/packages/catalogue/data/commodities`;
const asked = process.argv.slice(2);
for (const file of readdirSync(folder).sort()) {
  const kind = JSON.parse(readFileSync(`${folder}/${file}`, "utf8"));
  if (!kind.guidance || (asked.length > 0 && !asked.includes(kind.id))) continue;
  const { en, es } = kind.guidance.words;
  const [grade, ease] = [englishGrade(guidanceTexts(en)), spanishEase(guidanceTexts(es))];
  const verdict = grade <= 6 && ease >= 70 ? "" : "  too hard";
  console.log(
    `${kind.id.padEnd(24)} English grade ${grade.toFixed(1)}  Spanish ease ${ease.toFixed(0)}${verdict}`,
  );
}
