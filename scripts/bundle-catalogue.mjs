// Gathers the catalogue's JSON files into packages/catalogue/src/data.generated.ts, so that the catalogue can be used
// where there is no file system. Uses Node's own modules only. Writes nothing when nothing has changed.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";

const catalogue = fileURLToPath(new URL("../packages/catalogue/", import.meta.url));
const data = join(catalogue, "data");
const target = join(catalogue, "src", "data.generated.ts");
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

const sections = {
  commodities: jsonFiles("commodities").map(readCommodity),
  sources: jsonFiles("sources").flatMap(readSources),
  groups: readJson(join(data, "groups.json")),
  wraps: readJson(join(data, "wraps.json")),
  odours: readJson(join(data, "odours.json")),
  safety: readJson(join(data, "safety.json")),
};

if (problems.length > 0) {
  for (const problem of problems) console.error(problem);
  process.exit(1);
}

const text = [
  "// Made by scripts/bundle-catalogue.mjs from packages/catalogue/data. Change the data, not this file.",
  ...Object.entries(sections).map(
    ([name, value]) =>
      `export const ${name}: unknown = JSON.parse(${JSON.stringify(JSON.stringify(value))});`,
  ),
  "",
].join("\n");
if (!existsSync(target) || readFileSync(target, "utf8") !== text) writeFileSync(target, text);
