import { join } from "node:path";
import { catalogue } from "@keepwright/catalogue";
import { jsonText, makeKit } from "@keepwright/handout";
import type { Command } from "commander";
import { fileOf, printedDocument } from "../class/kitPdfs.js";
import { slidesFile, writeSlides } from "../class/kitSlides.js";
import { twoWaysFiles, writeTwoWays } from "../class/kitTwoWays.js";
import { readClassRequest } from "../class/readClassRequest.js";
import type { Door } from "../door/door.js";
import { exitCodes } from "../exitCodes.js";
import { jsonHelp } from "../options/shared.js";
import type { CommandOutcome } from "../program.js";
import { quoted, userError } from "../userError.js";
import { whileTelling } from "./haulCommand.js";

const help = `
FILE is JSON, as in schemas/class-request.schema.json. All but the version and what the class is about may be left out:

  {"version": 1, "items": ["apples", "kale", "potatoes"]}
  {"version": 1, "season": {"month": 6, "region": "northern", "kinds": 8}, "minutes": 45,
   "audience": {"language": "es", "print": "large", "paper": "letter", "units": "us"}}

Examples:
  keepwright class class.json --into kit
  keepwright class class.json --into kit --json
`;

interface ClassOptions {
  readonly into: string;
  readonly json?: true;
}

/** \`keepwright class\`: a kit for a class, made for exactly the kinds it is about. */
export function classCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  program
    .command("class")
    .summary("make a kit for a class: answer sheets, a page of places, a comparison, slides")
    .description(
      "Makes a kit for a class about some kinds: answer sheets and more, as tagged PDFs (PDF/UA-1); the same food laid two ways; and slides to show (PPTX).",
    )
    .argument("<file>", "the request, a JSON file")
    .requiredOption("-i, --into <folder>", "the folder to write to; made if it is not there")
    .option("--json", jsonHelp)
    .addHelpText("after", help)
    .action((path: string, options: ClassOptions) => runClass(door, path, options, outcome));
}

function runClass(door: Door, path: string, options: ClassOptions, outcome: CommandOutcome): void {
  if (door.look(options.into) === "file")
    throw userError(`--into ${quoted(options.into)}`, "this is a file", "Name a folder to write to.");
  const request = readClassRequest(door, path);
  const all = catalogue();
  const kit = whileTelling(door, "Making the kit …", () => makeKit(request, all));
  door.makeFolder(options.into);
  for (const document of kit.documents) {
    const { bytes } = printedDocument(kit, document);
    door.writeFile(join(options.into, fileOf(document)), bytes);
  }
  writeTwoWays(door, options.into, kit, all);
  outcome.later = async () => {
    await writeSlides(door, options.into, kit, all);
    const files = [...kit.documents.map(fileOf), ...twoWaysFiles, slidesFile];
    door.out(options.json ? jsonText(kit.documents) : `${files.join("\n")}\n`);
    return exitCodes.done;
  };
}
