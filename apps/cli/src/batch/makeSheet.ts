import { catalogue } from "@keepwright/catalogue";
import { jsonText, pageWords, readingView, sheetView, writtenPlan } from "@keepwright/handout";
import { sheetPdf } from "@keepwright/paper";
import {
  bindProblem,
  type Kitchen,
  kitchenFrom,
  ordinaryKitchens,
  type PlanRequest,
  planProblem,
  told,
} from "@keepwright/planner";
import { calendarDate } from "@keepwright/quantities";
import { isOrdinaryKey, ordinaryKeys } from "../commands/kitchenFor.js";
import { readLots } from "../commands/readLots.js";
import { awayDays } from "../options/dates.js";
import { askedLanguage, contextFor } from "../options/language.js";
import { usualPaper } from "../options/paper.js";
import { quoted, UserError } from "../userError.js";
import type { BatchRow } from "./row.js";
import type { BatchSettings } from "./settings.js";

/** What is made of one row: the page, the plan as `keepwright plan --json` prints it, and what was not understood. */
export interface MadeSheet {
  readonly pdf: Uint8Array;
  readonly plan: string;
  readonly pages: number;
  /** Lots that are planned. */
  readonly lots: number;
  /** What was not understood, as questions; empty where all was. */
  readonly questions: readonly string[];
}

function kitchenOf({ kitchen }: BatchRow, otherwise: Kitchen): Kitchen {
  if (kitchen === undefined) return otherwise;
  if (typeof kitchen !== "string") return kitchenFrom(kitchen);
  if (isOrdinaryKey(kitchen)) return ordinaryKitchens[kitchen];
  throw new UserError([
    {
      thing: "row kitchen",
      value: quoted(kitchen),
      remedy: `Give one of ${ordinaryKeys.join(", ")}, or a whole kitchen as \`keepwright kitchen ordinary --json\` prints it.`,
      ...told("row kitchen not known", { kitchen: quoted(kitchen), keys: ordinaryKeys }),
    },
  ]);
}

/** Plans one row and sets its page. Throws UserError, InputError or PaperError where nothing can be made of it. */
export function makeSheet(row: BatchRow, settings: BatchSettings): MadeSheet {
  const units = row.units ?? settings.units;
  const context = contextFor({ units, language: askedLanguage(row.language ?? "") ?? settings.language });
  const from = row.from === undefined ? settings.from : calendarDate(row.from);
  const read = readLots(context, catalogue(), row.haul, from);
  const days = row.days ?? settings.days;
  const people = row.people ?? settings.people;
  const portions = row.portions ?? settings.portions;
  const request: PlanRequest = {
    haul: { lots: read.lots },
    kitchen: kitchenOf(row, settings.kitchen),
    household: {
      ...(people !== undefined && { people }),
      ...(portions !== undefined && { portionsPerPersonPerDay: portions }),
      days,
      daysAway: row.away === undefined ? [] : awayDays(row.away.join(","), from, days),
    },
    from,
    seed: row.seed ?? settings.seed,
    catalogue: catalogue(),
  };
  const plan = planProblem(bindProblem(request));
  const counted = new Map(read.lots.map((lot) => [lot.id, lot]));
  const { bytes, pages } = sheetPdf(sheetView(context, plan, counted), {
    paper: row.paper ?? settings.paper ?? usualPaper(units),
    large: row.large ?? settings.large,
    pageWords: (page, all) => pageWords(context, page, all),
  });
  return {
    pdf: bytes,
    plan: jsonText(writtenPlan(plan, read.reading)),
    pages,
    lots: read.lots.length,
    questions: read.partly ? readingView(context, read.reading).questions : [],
  };
}
