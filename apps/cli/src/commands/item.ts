import { bundledGuidance, catalogue, findKind, findKinds, folded, namesOf } from "@keepwright/catalogue";
import {
  answerItem,
  type HandoutContext,
  itemText,
  itemView,
  jsonText,
  kindName,
  questionLine,
  takenForLine,
} from "@keepwright/handout";
import { type RipenessWord, readHaul, ripenessOfWord, ripenessWords } from "@keepwright/planner";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { contextFor, type TellingOptions, withLanguageOption } from "../options/language.js";
import { decimalOption, temperatureOption } from "../options/numbers.js";
import { jsonHelp, unitsFlag, unitsHelp, unitsOption } from "../options/shared.js";
import { quoted, UserError, userError } from "../userError.js";
import { kitchenFor } from "./kitchenFor.js";

export interface ItemOptions extends TellingOptions {
  readonly at?: number;
  readonly rh?: number;
  readonly ethylene?: number;
  readonly ripeness?: number;
  readonly kitchen?: string;
  readonly json?: true;
}

const help = `
Without --at and --rh: the temperature and humidity recommended for the kind. Without --ethylene: 0.06 µL/L, as in
ordinary stores.

Examples:
  keepwright item carrots
  keepwright item "sweet pepper" --at 4
  keepwright item jitomate --language es
  keepwright item banana --at 55F --rh 85 --ethylene 0.5 --json
`;

function ripenessOption(text: string): number {
  const word = text.trim().toLowerCase();
  if (!(ripenessWords as readonly string[]).includes(word)) {
    throw userError("--ripeness", quoted(text), `Give one of: ${ripenessWords.join(", ")}.`);
  }
  return ripenessOfWord[word as RipenessWord];
}

/** `keepwright item`: where one kind belongs, how long it lasts, and why. */
export function itemCommand(program: Command, door: Door): void {
  withLanguageOption(program.command("item"))
    .summary("say where one kind belongs, how long it lasts there, and why")
    .description(
      "Says where one kind belongs, how long it lasts in given air, what ends it, and from which sources.",
    )
    .argument("<name...>", "any name of the kind")
    .option(
      "--at <temperature>",
      "temperature in °C, or in °F with an F (40F)",
      temperatureOption("--at", { least: -5, most: 45 }),
    )
    .option("--rh <percent>", "relative humidity", decimalOption("--rh", { least: 1, most: 100 }, "%"))
    .option(
      "--ethylene <level>",
      "ethylene in the air, in µL/L",
      decimalOption("--ethylene", { least: 0, most: 1000 }, "µL/L"),
    )
    .option("--ripeness <word>", `how ripe it is: ${ripenessWords.join(", ")}`, ripenessOption)
    .option("-k, --kitchen <file>", "kitchen file, or the key of an ordinary one (see keepwright kitchen)")
    .option(unitsFlag, unitsHelp, unitsOption, "metric")
    .option("--json", jsonHelp)
    .addHelpText("after", help)
    .action((words: string[], options: ItemOptions) => runItem(door, words.join(" "), options));
}

/** Most names that are offered instead. */
const mostOffered = 6;

/** Whether the words are wholly a name of a kind: "bean sprouts" are told about with their hazards, though no plan takes them unasked. */
const isNameOfKind = (name: string): boolean =>
  [...catalogue().commodities.values()].some((kind) =>
    namesOf(kind).some((each) => folded(each) === folded(name)),
  );

/** Spoilt, wild or preserved produce is no kind of fresh produce: says the caution instead of taking the nearest kind. */
function refuseWhatIsNotKept(context: HandoutContext, name: string): void {
  if (isNameOfKind(name)) return;
  const questions = readHaul(name, catalogue()).items.flatMap((item) => item.questions);
  const notKept = questions.find((question) => question.ask === "unsafe or other");
  if (notKept) throw userError("name", quoted(name), questionLine(context, notKept));
}

/** The one kind meant. Throws UserError with the kinds it may be when it is not sure. */
function kindMeant(door: Door, context: HandoutContext, name: string): string {
  refuseWhatIsNotKept(context, name);
  const sure = findKind(catalogue(), name);
  if (sure) {
    if (sure.by === "spelling") door.err(`${takenForLine(context, quoted(name), quoted(sure.name))}\n`);
    return sure.id;
  }
  const candidates = findKinds(catalogue(), name, mostOffered).map(({ id }) => id);
  const names = context.speaker.choices(candidates.map((id) => kindName(context, id, "one")));
  const thing = `name ${quoted(name)}`;
  const finding =
    candidates.length > 0
      ? { thing, value: "it may be more than one kind", remedy: `Give one of: ${names}.` }
      : { thing, value: "no kind by this name is known", remedy: "Check the spelling, or try another name." };
  throw new UserError([finding], { candidates });
}

function runItem(door: Door, name: string, options: ItemOptions): void {
  const context = contextFor(options);
  const id = kindMeant(door, context, name);
  const asked = {
    temperature: options.at,
    relativeHumidity: options.rh,
    ethylene: options.ethylene,
    ripeness: options.ripeness,
  };
  const kitchen = kitchenFor(door, options.kitchen);
  const { name: language } = options.language;
  const guidance = bundledGuidance(language).get(id);
  const answer = answerItem(catalogue(), id, kitchen, asked, { language, guidance });
  if (options.json) {
    door.out(jsonText(answer));
    return;
  }
  door.out(itemText(context, itemView(context, answer)));
}
