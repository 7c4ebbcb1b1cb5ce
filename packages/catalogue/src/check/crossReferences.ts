import type { Catalogue } from "../catalogue.js";
import { folded } from "../find/fold.js";
import { namesOf } from "../find/names.js";
import { type Candidate, findKinds } from "../find.js";
import type { Commodity } from "../schema.js";
import { dairy } from "../tables.js";
import { recordsOf, sourceUses } from "./evidence.js";
import { checkMemory } from "./memory.js";

/** Share by which a respiration rate may fall from one temperature to the next before it is taken for a slip of the pen. */
const respirationNoise = 0.1;

/** Sources that one record names and nobody has. */
export const checkSourcesOf = (
  name: string,
  record: unknown,
  sources: ReadonlyMap<string, unknown>,
): string[] =>
  sourceUses(record)
    .filter((use) => !sources.has(use.source))
    .map(
      (use) =>
        `${name}: ${use.path} names the source "${use.source}"; use the id of a source in data/sources, or add it there.`,
    );

const checkSources = (catalogue: Catalogue): string[] =>
  recordsOf(catalogue).flatMap(([name, record]) => checkSourcesOf(name, record, catalogue.sources));

function checkRespiration(id: string, commodity: Commodity): string[] {
  return commodity.respiration.slice(1).flatMap((entry, index) => {
    const before = commodity.respiration[index]!;
    if (entry.temperature <= before.temperature) {
      return [
        `${id}: respiration.${index + 1}.temperature is ${entry.temperature}; write the table in ascending temperature, each once.`,
      ];
    }
    const fall = 1 - (entry.low + entry.high) / (before.low + before.high);
    return fall > respirationNoise
      ? [
          `${id}: respiration.${index + 1} falls from ${before.low}–${before.high} to ${entry.low}–${entry.high}; check the figures, rates rise with temperature.`,
        ]
      : [];
  });
}

function checkUnits(id: string, { household }: Commodity): string[] {
  const names = household.units.map((unit) => unit.name);
  const known = new Set(names);
  const missing = (["countUnit", "bareUnit"] as const)
    .filter((field) => !known.has(household[field]))
    .map(
      (field) =>
        `${id}: household.${field} is "${household[field]}"; write one of ${names.map((name) => `"${name}"`).join(", ")}.`,
    );
  const twice = names
    .filter((name, index) => names.indexOf(name) !== index)
    .map((name) => `${id}: household.units has "${name}" twice; keep one.`);
  return [...missing, ...twice];
}

/** A kind may be climacteric and sold ready to eat (apple): then no ripening is given. Only climacteric kinds ripen. */
function checkRipening(id: string, commodity: Commodity): string[] {
  if (commodity.climacteric || commodity.ripening === undefined) return [];
  return [
    `${id}: climacteric is false and ripening is given; leave it out, only climacteric kinds ripen after harvest.`,
  ];
}

const isWhole = ({ by }: Candidate): boolean => ["exact", "word order", "several kinds"].includes(by);

/** Two kinds may share a name only when a group says so. */
function checkNames(catalogue: Catalogue): string[] {
  const owners = new Map<string, string>();
  const declared = new Map(catalogue.groups.map((group) => [folded(group.word), new Set(group.kinds)]));
  const problems: string[] = [];
  for (const commodity of catalogue.commodities.values()) {
    for (const name of new Set(namesOf(commodity).map(folded))) {
      const owner = owners.get(name);
      const group = declared.get(name);
      if (owner !== undefined && !(group?.has(owner) && group.has(commodity.id))) {
        problems.push(
          `${commodity.id}: names has "${name}", which ${owner} has too; drop it from one, or declare the group in data/groups.json.`,
        );
      }
      owners.set(name, commodity.id);
    }
  }
  return problems;
}

/** A region's name that the kind is not found by would be told to people and then not understood from them. */
const checkRegional = (catalogue: Catalogue): string[] =>
  [...catalogue.commodities.values()].flatMap(({ id, names }) =>
    [...(names.en.regional ?? []), ...(names.es.regional ?? [])]
      .flatMap(({ one, many }) => [one, many])
      .filter((name) => !findKinds(catalogue, name).some((found) => found.id === id && isWhole(found)))
      .map((name) => `${id}: regional has "${name}", which it is not found by; add it to also.`),
  );

function checkReferences(catalogue: Catalogue): string[] {
  const known = (id: string) => catalogue.commodities.has(id);
  const inOdours = catalogue.odours.flatMap((pair) =>
    [pair.giver, pair.taker]
      .filter((id) => !known(id) && !(id === dairy && id === pair.taker))
      .map(
        (id) =>
          `odour ${pair.giver} to ${pair.taker}: there is no kind "${id}"; use the id of a commodity file.`,
      ),
  );
  const inGroups = catalogue.groups.flatMap((group) =>
    group.kinds
      .filter((id) => !known(id))
      .map((id) => `group "${group.word}": there is no kind "${id}"; use the id of a commodity file.`),
  );
  const unusual = catalogue.groups.flatMap(({ word, kinds, usual, usualIn }) =>
    [...(usual === undefined ? [] : [usual]), ...Object.values(usualIn ?? {})]
      .filter((id) => !kinds.includes(id))
      .map((id) => `group "${word}": usual is "${id}"; write one of its kinds.`),
  );
  return [...inOdours, ...inGroups, ...unusual];
}

/** What one record cannot show alone: sources that resolve, tables in order, names that are not shared by accident. */
export const checkCrossReferences = (catalogue: Catalogue): string[] => [
  ...checkSources(catalogue),
  ...checkMemory(catalogue),
  ...[...catalogue.commodities].flatMap(([id, commodity]) => [
    ...checkRespiration(id, commodity),
    ...checkUnits(id, commodity),
    ...checkRipening(id, commodity),
  ]),
  ...checkNames(catalogue),
  ...checkRegional(catalogue),
  ...checkReferences(catalogue),
];

/** Sources that nothing in the catalogue names, nor any record that is kept beside it (guidance). */
export function unusedSources(catalogue: Catalogue, beside: readonly unknown[] = []): string[] {
  const records = [...recordsOf(catalogue).map(([, record]) => record), ...beside];
  const used = new Set(records.flatMap((record) => sourceUses(record).map((use) => use.source)));
  return [...catalogue.sources.keys()].filter((id) => !used.has(id));
}
