// Gathers the catalogue's JSON files into modules under packages/catalogue/src, so that the catalogue can be used where
// there is no file system, and in parts: names; figures; the provenance of figures; guidance, and its words in each language.
// Uses Node's own modules only. Writes nothing when nothing has changed.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";

import { parted } from "./lib/provenance.mjs";

const catalogue = fileURLToPath(new URL("../packages/catalogue/", import.meta.url));
const data = join(catalogue, "data");
const problems = [];

function readJson(file) {
  try {
    return JSON.parse(readFileSync(file, "utf8"));
  } catch (error) {
    problems.push(`${file}: ${error.message}. Write it as valid JSON.`);
    return undefined;
  }
}

const jsonFiles = (folder) =>
  readdirSync(join(data, folder))
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => join(data, folder, name));

function readCommodity(file) {
  const commodity = readJson(file);
  const expected = basename(file, ".json");
  if (commodity !== undefined && commodity?.id !== expected) {
    problems.push(
      `${file}: its id is ${JSON.stringify(commodity?.id)}; make it "${expected}", the file's name, or rename the file.`,
    );
  }
  return commodity;
}

function readSources(file) {
  const sources = readJson(file);
  if (sources !== undefined && !Array.isArray(sources))
    problems.push(`${file}: write it as a list of sources, [ … ].`);
  return Array.isArray(sources) ? sources : [];
}

const kinds = jsonFiles("commodities").map(readCommodity);
const sources = jsonFiles("sources").flatMap(readSources);
const [groups, wraps, odours, safety] = ["groups", "wraps", "odours", "safety"].map((name) =>
  readJson(join(data, `${name}.json`)),
);

if (problems.length > 0) {
  for (const problem of problems) console.error(problem);
  process.exit(1);
}

const commodities = kinds.map(({ guidance: _guidance, names: _names, ...rest }) => rest);
const guided = kinds.filter(({ guidance }) => guidance !== undefined);
const wordsIn = (language) => guided.map(({ id, guidance }) => ({ id, words: guidance.words?.[language] }));
const facts = guided.map(({ id, guidance: { words: _, ...rest } }) => ({ id, ...rest }));

const { figures, provenance } = parted({ commodities, sources, groups, wraps, odours, safety });

const modules = {
  figures,
  provenance: { provenance },
  names: { names: kinds.map(({ id, names }) => ({ id, names })) },
  guidance: { facts },
  guidanceEnglish: { words: wordsIn("en") },
  guidanceSpanish: { words: wordsIn("es") },
};

/** A text as JavaScript writes it between single quotes: JSON is full of double ones, and each would take a stroke before it. */
const singleQuoted = (text) =>
  `'${text.replace(/[\\'\u2028\u2029]/g, (letter) => (letter < "\u2028" ? `\\${letter}` : `\\u${letter.charCodeAt(0).toString(16)}`))}'`;

for (const [name, sections] of Object.entries(modules)) {
  const target = join(catalogue, "src", `${name}.generated.ts`);
  const text = [
    "// Made by scripts/bundle-catalogue.mjs from packages/catalogue/data. Change the data, not this file.",
    ...Object.entries(sections).map(
      ([section, value]) =>
        `export const ${section}: unknown = JSON.parse(${singleQuoted(JSON.stringify(value))});`,
    ),
    "",
  ].join("\n");
  if (!existsSync(target) || readFileSync(target, "utf8") !== text) writeFileSync(target, text);
}
