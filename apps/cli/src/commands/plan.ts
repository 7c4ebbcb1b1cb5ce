import {
  type HandoutContext,
  jsonText,
  planText,
  planView,
  progressLine,
  whyText,
  whyViews,
  writtenPlan,
} from "@keepwright/handout";
import {
  bindProblem,
  explainNamed,
  explainPlan,
  type LotReason,
  type Plan,
  type PlanRequest,
  planDraws,
  planProblem,
} from "@keepwright/planner";
import type { Command } from "commander";
import type { Door } from "../door/door.js";
import { exitCodes } from "../exitCodes.js";
import { haulHelp } from "../options/haulArgument.js";
import { type HouseholdOptions, planRequest, withHouseholdOptions } from "../options/household.js";
import { contextFor } from "../options/language.js";
import { wholeOption } from "../options/numbers.js";
import type { CommandOutcome } from "../program.js";
import { readHaulArgument, surroundings, tellQuestions, whileTelling } from "./haulCommand.js";
import { kitchenFor } from "./kitchenFor.js";
import { proofFor, proveFlag, proveHelp } from "./proofFor.js";

const help = `${haulHelp}
Examples:
  keepwright plan "2 lb apples, a bunch of cilantro, 3 avocados, 1 ripe"
  keepwright plan haul.txt --people 4 --from 2026-06-13 --away 2026-06-14,2026-06-20/2026-06-21
  keepwright plan - --kitchen my-kitchen.json --json < haul.txt
  keepwright plan haul.txt --kitchen small --units us
  keepwright plan haul.txt --why
  keepwright plan haul.txt --why-lot broccoli --json
  keepwright plan haul.txt --draws 1000
  keepwright plan haul.txt --prove
`;

interface PlanOptions extends HouseholdOptions {
  readonly why?: true;
  readonly whyLot?: string;
  readonly draws?: number;
  readonly prove?: true;
}

/** Draws that can be asked for: more would tell nothing more, and take minutes. */
const mostDraws = 10_000;

/** `keepwright plan`: from a haul to a plan. */
export function planCommand(program: Command, door: Door, outcome: CommandOutcome): void {
  withHouseholdOptions(program.command("plan"))
    .summary("plan where a haul goes, what to do to it, when it moves and what to eat first")
    .description(
      "Plans a haul: where each thing goes, how it is wrapped, when it moves, what to eat first, and why.",
    )
    .argument("<haul...>", "what came home: a file, - for standard input, or the words themselves")
    .option("--why", "also say why each thing lies where it does, and what neighbours do to it")
    .option("--why-lot <lot>", "say it of one lot in full: its id, what was typed for it, or its kind")
    .option(
      "--draws <number>",
      "carry the plan out so many times with temperatures, ages and biology drawn, and tell how sure it is",
      wholeOption("--draws", { least: 1, most: mostDraws }),
    )
    .option(proveFlag, proveHelp)
    .addHelpText("after", help)
    .action((words: string[], options: PlanOptions) => {
      outcome.code = runPlan(door, words, options) ? exitCodes.partlyUnderstood : exitCodes.done;
    });
}

/** Why things lie where they do, where that is asked for: of one lot in full, or of all beside their nearest rivals. */
function reasonsFor(request: PlanRequest, plan: Plan, options: PlanOptions): LotReason[] | undefined {
  if (options.whyLot !== undefined) return explainNamed({ ...request, plan, lot: options.whyLot });
  return options.why ? explainPlan({ ...request, plan }) : undefined;
}

function makePlan(door: Door, context: HandoutContext, request: PlanRequest, options: PlanOptions): Plan {
  const problem = bindProblem(request);
  const plan = whileTelling(door, progressLine(context, "plan"), () => planProblem(problem));
  const { draws: count } = options;
  const draws =
    count === undefined
      ? undefined
      : whileTelling(door, progressLine(context, "draws", count), () =>
          planDraws(problem, plan, count, problem.seed),
        );
  const proof = options.prove && proofFor(door, context, problem, plan);
  return { ...plan, ...(draws && { draws }), ...(proof && { proof }) };
}

/** Plans and prints. True when some words were not understood. */
function runPlan(door: Door, words: readonly string[], options: PlanOptions): boolean {
  const context = contextFor(options);
  const read = readHaulArgument(door, context, words, options.from);
  const kitchen = kitchenFor(door, options.kitchen);
  const request = planRequest(door, options, read.lots, kitchen);
  const plan = makePlan(door, context, request, options);
  const why = whileTelling(door, progressLine(context, "why"), () => reasonsFor(request, plan, options));
  if (options.json) {
    door.out(jsonText(writtenPlan(plan, read.reading, why)));
  } else {
    const view = planView(context, plan, surroundings(read, kitchen, options.kitchen === undefined));
    door.out(planText(context, view));
    if (why) door.out(`\n${whyText(context, whyViews(context, plan, why, options.whyLot !== undefined))}`);
  }
  tellQuestions(door, context, read, options.json === true);
  return read.partly;
}
