import { type UnitSystem, unitSystems } from "@keepwright/handout";
import { quoted, userError } from "../userError.js";

export function unitsOption(text: string): UnitSystem {
  const units = unitSystems.find((name) => name === text.trim().toLowerCase());
  if (!units) throw userError("--units", quoted(text), `Give one of: ${unitSystems.join(", ")}.`);
  return units;
}

export const unitsFlag = "--units <system>";
export const unitsHelp = "metric (°C, kg, L) or us (°F, lb, qt)";
export const jsonHelp = "print JSON instead of text, errors too";
