import { Command } from "commander";
import { batchCommand } from "./commands/batch.js";
import { buyCommand } from "./commands/buy.js";
import { calendarCommand } from "./commands/calendar.js";
import { carryOnCommand } from "./commands/carryOn.js";
import { classCommand } from "./commands/class.js";
import { improveCommand } from "./commands/improve.js";
import { itemCommand } from "./commands/item.js";
import { judgeCommand } from "./commands/judge.js";
import { kitchenCommand } from "./commands/kitchen.js";
import { labelsCommand } from "./commands/labels.js";
import { planCommand } from "./commands/plan.js";
import { rowsCommand } from "./commands/rows.js";
import { sheetCommand } from "./commands/sheet.js";
import type { Door } from "./door/door.js";
import { type ExitCode, exitCodesHelp } from "./exitCodes.js";
import { version } from "./version.js";

/** Where a command leaves its exit code. */
export interface CommandOutcome {
  code: ExitCode;
  /** What is left to do where a command takes longer than one go; its exit code then holds. */
  later?: () => Promise<ExitCode>;
}

const examples = `
Examples:
  keepwright plan "2 lb apples, a bunch of cilantro, 3 avocados, 1 ripe"
  keepwright judge haul.txt --arrangement mine.json
  keepwright improve "2 lb apples, a bunch of cilantro, 3 avocados, 1 ripe"
  keepwright buy "1 kg spinach, 3 heads romaine, 5 kg potatoes" --people 2 --days 7
  keepwright carry-on plan.json --happened "ate 2 apples; avocados ripe"
  keepwright calendar plan.json > plan.ics
  keepwright labels plan.json > labels.html
  keepwright rows plan.json --csv > stays.csv
  keepwright sheet haul.txt --language es --out door.pdf
  keepwright batch boxes.ndjson --sheets sheets
  keepwright class class.json --into kit
  keepwright item carrots
  keepwright kitchen
`;

/** The whole command line: one command a file. Prints through the door only, and throws instead of leaving the process. */
export function keepwrightProgram(door: Door, outcome: CommandOutcome): Command {
  const program = new Command("keepwright")
    .description(
      "Works out where fresh fruit and vegetables should go, how long they will last, and what to eat first.",
    )
    .version(version(), "-V, --version", "print the version")
    .helpOption("-h, --help", "print this help")
    .exitOverride()
    .configureOutput({ writeOut: (text) => door.out(text), writeErr: () => undefined })
    .addHelpText("after", examples + exitCodesHelp);
  planCommand(program, door, outcome);
  judgeCommand(program, door, outcome);
  improveCommand(program, door, outcome);
  buyCommand(program, door, outcome);
  carryOnCommand(program, door, outcome);
  calendarCommand(program, door, outcome);
  labelsCommand(program, door, outcome);
  rowsCommand(program, door, outcome);
  sheetCommand(program, door, outcome);
  batchCommand(program, door, outcome);
  classCommand(program, door, outcome);
  itemCommand(program, door);
  kitchenCommand(program, door);
  return program;
}
