import { catalogue } from "@keepwright/catalogue";
import {
  type ClassKit,
  classSayer,
  jsonText,
  kitChanges,
  kitChangesText,
  makeKit,
} from "@keepwright/handout";
import type { Command } from "commander";
import { earlierKit, type WrittenChanges, writeKit } from "../class/kitFolder.js";
import { type PrintedKit, printedKit } from "../class/printedKit.js";
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
  {"version": 1, "household": {"haul": "8 apples, 2 kg potatoes, a bunch of kale", "people": 3}}
  {"version": 1, "season": {"month": 6, "region": "northern", "kinds": 8}, "minutes": 45, "topics": ["places", "myths"],
   "audience": {"language": "es", "print": "large", "paper": "letter", "units": "us"}}

The folder gets a PDF for each document, slides.pptx, the comparison as data and as text, kit.json with what went in, and documents.json with what they say. Made again into
the same folder, it also gets what-changed.txt and what-changed.json.

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
    .summary("make a kit for a class: answer sheets, quiz, exercise, running sheet, slides")
    .description(
      "Makes a kit for a class about some kinds: answer sheets, a page of places, sayings, cards, questions, an exercise and the host's running sheet, as tagged PDFs (PDF/UA-1); the same food laid two ways; and slides to show (PPTX).",
    )
    .argument("<file>", "the request, a JSON file")
    .requiredOption("-i, --into <folder>", "the folder to write to; made if it is not there")
    .option("--json", jsonHelp)
    .addHelpText("after", help)
    .action((path: string, options: ClassOptions) => runClass(door, path, options, outcome));
}

const sayOf = ({ request, language }: ClassKit) => classSayer(request.audience.language, language);

/** The kit beside the one that lay there before, where there was one. */
function changesOf(printed: PrintedKit, earlier: ReturnType<typeof earlierKit>): WrittenChanges | undefined {
  if (!earlier) return undefined;
  const { kit, record } = printed;
  const changes = kitChanges(earlier, { record, documents: kit.documents });
  const names = new Map([...earlier.record.items, ...record.items].map(({ id, name }) => [id, name]));
  return { changes, text: kitChangesText(sayOf(kit), changes, names) };
}

function summary({ kit, record }: PrintedKit, folder: string): string {
  const say = sayOf(kit);
  const lines = record.documents.map(({ file, pages, title, reader }) => {
    const line = say("made.document", { file, pages, title });
    return `- ${reader === "host" ? say("made.host", { line }) : line}`;
  });
  const names = kit.items.map(({ name }) => name).join(", ");
  return `${[
    say("made.kit", { folder, count: lines.length }),
    ...lines,
    ...record.otherFiles.map(({ file }) => `- ${file}`),
    ...kit.taken,
    ...(kit.request.season ? [say("made.season", { names })] : []),
  ].join("\n")}\n`;
}

function runClass(door: Door, path: string, { into, json }: ClassOptions, outcome: CommandOutcome): void {
  if (door.look(into) === "file")
    throw userError(`--into ${quoted(into)}`, "this is a file", "Name a folder to write to.");
  const request = readClassRequest(door, path);
  const earlier = earlierKit(door, into);
  const say = classSayer(request.audience.language, request.audience.language);
  const kit = whileTelling(door, say("made.progress"), () => makeKit(request, catalogue()));
  outcome.later = async () => {
    const printed = await printedKit(kit, catalogue());
    const told = changesOf(printed, earlier);
    writeKit(door, into, printed, earlier, told);
    const { record } = printed;
    if (json) door.out(jsonText({ folder: into, kit: record, ...(told && { changes: told.changes }) }));
    else door.out(`${summary(printed, into)}${told ? `\n${told.text}` : ""}`);
    return exitCodes.done;
  };
}
