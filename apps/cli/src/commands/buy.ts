import {
  type HandoutContext,
  jsonText,
  progressLine,
  worthBuyingText,
  worthBuyingView,
  writtenWorthBuying,
} from "@keepwright/handout";
import { type BuyingRequest, buyable, type WorthBuying } from "@keepwright/planner";
import { gramsPerPound } from "@keepwright/quantities";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { exitCodes } from "../exitCodes.js";
import { haulHelp } from "../options/haulArgument.js";
import { type HouseholdOptions, planRequest, withHouseholdOptions } from "../options/household.js";
import { contextFor } from "../options/language.js";
import type { CommandOutcome } from "../program.js";
import { readHaulArgument, tellQuestions, whileTelling } from "./haulCommand.js";
import { kitchenFor } from "./kitchenFor.js";
import type { ReadLots } from "./readLots.js";

const help = `${haulHelp.replaceAll("HAUL", "LIST").replaceAll("haul", "list")}
Amounts are cut by whole pieces, whole bunches and the like, or steps of weight (100 g; a quarter of a pound with
--units us). It takes about ten times as long as a plan.

Examples:
  keepwright buy "1 kg spinach, 3 heads romaine, 5 kg potatoes" --people 2 --days 7
  keepwright buy list.txt --people 4 --days 6 --from 2026-06-13
  keepwright buy list.txt --kitchen my-kitchen.json --json
`;

/** A quarter of a pound [g]: the step in which what is loose is weighed out where people think in pounds. Common practice, no source. */
const quarterPound = gramsPerPound / 4;

/** `keepwright buy`: how much of a wished list can be kept and eaten before it goes. */
export function buyCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withHouseholdOptions(program.command("buy"))
    .summary("say how much of a list is worth buying for these people, days and kitchen")
    .description(
      "Says how much of a wished list can be kept and eaten before it goes, which amounts to cut and why, and plans for the rest.",
    )
    .argument(
      "<list...>",
      "what you would like to buy: a file, - for standard input, or the words themselves",
    )
    .addHelpText("after", help)
    .action((words: string[], options: HouseholdOptions) => {
      outcome.code = runBuy(door, words, options) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

function worthBuying(door: Door, context: HandoutContext, request: BuyingRequest): WorthBuying {
  return whileTelling(door, progressLine(context, "buy"), () => buyable(request));
}

const wishedOf = (door: Door, options: HouseholdOptions, read: ReadLots): BuyingRequest => {
  const { haul, ...rest } = planRequest(door, options, read.lots, kitchenFor(door, options.kitchen));
  return { ...rest, wished: haul, ...(options.units === "us" && { stepGrams: quarterPound }) };
};

/** Works out what is worth buying and prints it. True when some words were not understood. */
function runBuy(door: Door, words: readonly string[], options: HouseholdOptions): boolean {
  const context = contextFor(options);
  const read = readHaulArgument(door, context, words, options.from, "list");
  const told = worthBuying(door, context, wishedOf(door, options, read));
  if (options.json) {
    door.out(jsonText(writtenWorthBuying(told, read.reading)));
  } else {
    const view = worthBuyingView(context, told, {
      kitchen: kitchenFor(door, options.kitchen),
      kitchenAssumed: options.kitchen === undefined,
      reading: read.reading,
    });
    door.out(worthBuyingText(context, view));
  }
  tellQuestions(door, context, read, options.json === true);
  return read.partly;
}
