import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { catalogue } from "@keepwright/catalogue";
import { type Kitchen, kitchenFrom, ordinaryKitchens, readHaul } from "@keepwright/planner";

export const folder = fileURLToPath(new URL(".", import.meta.url));

/** Names of the worked examples. */
export const exampleNames = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)
  .sort();

/** A worked example read from its folder, and what is asked of the planner. */
export function example(name: string) {
  const scenario = JSON.parse(readFileSync(`${folder}${name}/scenario.json`, "utf8"));
  const file = `${folder}${name}/kitchen.json`;
  const kitchen: Kitchen = existsSync(file)
    ? kitchenFrom(JSON.parse(readFileSync(file, "utf8")))
    : ordinaryKitchens.ordinary;
  const text = readFileSync(`${folder}${name}/haul.txt`, "utf8");
  const reading = readHaul(text, catalogue());
  const lots = reading.items.flatMap((item, index) =>
    item.kind === "lot" ? [{ ...item.lot, id: `lot-${index + 1}`, typed: item.typed }] : [],
  );
  const household = {
    people: scenario.people,
    portionsPerPersonPerDay: 5,
    daysAway: scenario.daysAway,
    days: scenario.days,
  };
  const haul = { lots };
  const request = { haul, kitchen, household, from: scenario.from, seed: 1, catalogue: catalogue() };
  return { scenario, kitchen, text, reading, lots, household, haul, request };
}
