import { jsonText, kitchenFineLine, kitchenText, kitchenView, warningLine } from "@keepwright/handout";
import { checkKitchen, ordinaryKitchens } from "@keepwright/planner";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { readJsonFile } from "../door/readText.js";
import { contextFor, type TellingOptions, withLanguageOption } from "../options/language.js";
import { jsonHelp, unitsFlag, unitsHelp, unitsOption } from "../options/shared.js";
import { plainFinding, quoted, UserError, userError } from "../userError.js";
import { isOrdinaryKey, ordinaryKeys } from "./kitchenFor.js";

export interface KitchenOptions extends TellingOptions {
  readonly check?: string;
  readonly json?: true;
}

const help = `
The JSON of one ordinary kitchen is a kitchen file: keep it, change it to be like yours, and plan with it.

Examples:
  keepwright kitchen
  keepwright kitchen small --language es
  keepwright kitchen ordinary --json > my-kitchen.json
  keepwright kitchen --check my-kitchen.json
`;

/** `keepwright kitchen`: the ordinary kitchens to start from, and a check of a kitchen file. */
export function kitchenCommand(program: Command, door: Door): void {
  withLanguageOption(program.command("kitchen"))
    .summary("print the ordinary kitchens to start from, or check a kitchen file")
    .description("Prints ordinary kitchens to start from, or checks a kitchen file.")
    .argument("[name]", `key of an ordinary kitchen: ${ordinaryKeys.join(", ")}`)
    .option("-c, --check <file>", "check this kitchen file")
    .option(unitsFlag, unitsHelp, unitsOption, "metric")
    .option("--json", jsonHelp)
    .addHelpText("after", help)
    .action((name: string | undefined, options: KitchenOptions) => {
      if (name !== undefined && options.check !== undefined) {
        throw userError("kitchen", "a name and --check together", "Give one of them.");
      }
      if (options.check !== undefined) checkFile(door, options.check, options);
      else printKitchens(door, name, options);
    });
}

function printKitchens(door: Door, name: string | undefined, options: KitchenOptions): void {
  if (name !== undefined && !isOrdinaryKey(name)) {
    throw userError(
      `kitchen ${quoted(name)}`,
      "there is no ordinary kitchen of this name",
      `Give one of: ${ordinaryKeys.join(", ")}; or check a file of your own with --check.`,
    );
  }
  if (options.json) {
    door.out(jsonText(name === undefined ? { kitchens: ordinaryKitchens } : ordinaryKitchens[name]));
    return;
  }
  const context = contextFor(options);
  for (const key of name === undefined ? ordinaryKeys : [name]) {
    door.out(`${[key, ...kitchenText(kitchenView(context, ordinaryKitchens[key]))].join("\n")}\n\n`);
  }
}

function checkFile(door: Door, path: string, options: KitchenOptions): void {
  const check = checkKitchen(readJsonFile(door, path, "kitchen file"));
  if (!check.ok) throw new UserError(check.problems, { ok: false });
  if (options.json) {
    door.out(jsonText({ ok: true, problems: [], warnings: check.warnings.map(plainFinding) }));
    return;
  }
  const context = contextFor(options);
  door.out(
    `${kitchenFineLine(context, quoted(path))}\n${check.warnings.map((one) => `${warningLine(context, one)}\n`).join("")}\n`,
  );
  door.out(`${kitchenText(kitchenView(context, check.kitchen)).join("\n")}\n`);
}
