import { folded } from "@keepwright/catalogue";
import { told } from "../problem/findingCode.js";
import { type Finding, HappenedError } from "../problem/inputError.js";
import { shownValue } from "../problem/schemaFindings.js";
import { byWords, examples, kindInPlan, understood } from "./accountKinds.js";
import { accountLines } from "./accountLines.js";
import type { HappenedContext, ReadAccount } from "./accountRead.js";
import { cameHome } from "./cameHome.js";
import { clearDayAtEnd, dayAtEnd, unclearDay } from "./dayTold.js";
import { cutUndated, type HappenedAmount } from "./happened.js";
import * as words from "./happenedWords.js";
import { Unreadable } from "./unreadable.js";

const bare = (text: string): string => text.replace(words.articles, "").trim();

/** How many portions a phrase begins with; undefined where it does not. */
function portionsIn(phrase: string): number | undefined {
  const found = words.portions.exec(phrase)?.slice(1);
  const group = found?.findIndex((one) => one !== undefined) ?? -1;
  if (!found || group < 0) return undefined;
  const counted = group === 0 ? Number(found[0]!.replace(",", ".")) : words.portionsOfGroup[group]!;
  return counted;
}

/** Lots named in a phrase, each with its amount: all of it where none is told. */
function amountsOf(context: HappenedContext, phrase: string): { lot: string; amount: HappenedAmount }[] {
  const share = words.shares.find(([, pattern]) => pattern.test(phrase));
  const whole = words.everything.test(phrase);
  const none = words.nothingOf.test(phrase);
  if (words.vague.test(phrase) || words.slices.test(phrase))
    throw new Unreadable(
      "account without amount",
      `${shownValue(phrase)} tells no amount`,
      "Say how much, for example: ate 200 g kale, or: half of the kale.",
      { phrase: shownValue(phrase) },
    );
  const rest = bare(
    phrase
      .replace(words.portions, "")
      .replace(share?.[1] ?? (whole ? words.everything : words.nothingOf), ""),
  );
  const portions = portionsIn(phrase);
  const told: HappenedAmount | undefined =
    portions !== undefined
      ? portions > 0
        ? { portions }
        : "none"
      : share
        ? { share: share[0] }
        : whole
          ? "all"
          : none
            ? "none"
            : undefined;
  const id = byWords(context, rest);
  if (id !== undefined) return [{ lot: id, amount: told ?? "all" }];
  return understood(context, rest).map((item) => {
    const { grams, pieces, wanted } = item.lot;
    if (wanted !== undefined || item.questions.some(({ ask }) => ask === "when wanted"))
      throw new Unreadable(
        "account of a day to come",
        `${shownValue(phrase)} tells of a day to come`,
        "Write what has happened by now; a day it is wanted for is told when it comes home.",
        { phrase: shownValue(phrase) },
      );
    const counted: HappenedAmount = pieces === undefined ? { grams } : { pieces, grams };
    const amount = told ?? (item.assumed.includes("usual amount") ? "all" : counted);
    return { lot: kindInPlan(context, item), amount };
  });
}

/** Lots of which something is told that holds for all of them: no part of one, and no day but the one that is told. */
function namesOf(context: HappenedContext, phrase: string): string[] {
  const named = bare(phrase).replace(words.everything, "");
  if (words.timeLeftOver.test(named)) throw unclearDay(phrase);
  return amountsOf(context, named).map(({ lot, amount }) => {
    if (amount === "all") return lot;
    throw new Unreadable(
      "account of a part",
      `${shownValue(phrase)} tells an amount, and this can be told of all of it only`,
      "Leave the amount out; or say of a part that it was eaten, given away or thrown out.",
      { phrase: shownValue(phrase) },
    );
  });
}

function placeIn(context: HappenedContext, name: string): string | undefined {
  const wanted = folded(name);
  const { places } = context;
  const exact = places.find(({ id, name: own, also = [] }) =>
    [id, own, ...also].some((called) => folded(called) === wanted),
  );
  if (exact) return exact.id;
  if (words.refrigeratorWords.test(name)) {
    return places.find(({ kind }) => kind === "refrigerator shelf")?.id;
  }
  const kind = words.placeKindWords.find(([, pattern]) => pattern.test(name))?.[0];
  const [only, second] = places.filter((place) => place.kind === kind);
  return second === undefined ? only?.id : undefined;
}

interface Moved extends Record<string, unknown> {
  readonly lot: string;
  readonly place?: string;
  readonly since?: string;
}

/** “the tomatoes to the counter in a paper bag”: the lots, the place, the wrap, since when. */
function movedLots(context: HappenedContext, phrase: string): Moved[] {
  const { rest: dated, date } = clearDayAtEnd(context.on, phrase);
  const wrap = words.wrapWords.find(([, pattern]) => pattern.test(dated));
  const rest = (wrap ? dated.replace(wrap[1], "") : dated).trim();
  const more = { ...(wrap && { wrap: wrap[0] }), ...(date !== undefined && { since: date }) };
  const cuts = [...rest.matchAll(words.toPlace)];
  for (const cut of cuts) {
    const place = placeIn(context, rest.slice(cut.index + cut[0].length).trim());
    if (place === undefined) continue;
    return namesOf(context, rest.slice(0, cut.index)).map((lot) => ({ lot, place, ...more }));
  }
  if (wrap && cuts.length === 0) return namesOf(context, rest).map((lot) => ({ lot, ...more }));
  const places = context.places.map(({ id, name }) => `${id} (${name})`).join(", ");
  throw new Unreadable(
    "account without a known place",
    `${shownValue(phrase)} names no place of the kitchen`,
    `Name one of: ${places}.`,
    { phrase: shownValue(phrase), places: context.places.map(({ id, name }) => ({ id, name })) },
  );
}

/** Hours as they are written: a number, or the word for one. */
function hoursTold([, written]: RegExpExecArray): number {
  const told = Number(written!.replace(",", "."));
  return Number.isFinite(told) ? told : 1;
}

function leftOut(context: HappenedContext, phrase: string): Record<string, unknown>[] {
  const found = words.hoursOut.exec(phrase);
  if (!found)
    throw new Unreadable(
      "account without hours",
      "it is not told for how many hours",
      "Write: left the melon out for 2 hours.",
    );
  const hoursOut = hoursTold(found);
  return namesOf(context, phrase.slice(0, found.index)).map((lot) => ({ lot, hoursOut }));
}

/** “left the kale on the counter since yesterday”, “left the melon on the table for 3 hours”. Nobody guesses how long: what is cut has hours only. */
function leftLying(context: HappenedContext, phrase: string): Record<string, unknown>[] {
  const hours = words.hoursLying.exec(phrase);
  const moved = movedLots(context, hours ? phrase.slice(0, hours.index) : phrase);
  const place = context.places.find(({ id }) => moved.some((one) => one.place === id));
  const cold = place !== undefined && /^(?:refrigerator|crisper)/.test(place.kind);
  if (hours && !cold) {
    const hoursOut = hoursTold(hours);
    return moved.map(({ lot }) => ({ lot, hoursOut }));
  }
  if (moved.every(({ since }) => since !== undefined) || cold) return moved;
  throw new Unreadable(
    "account without since",
    "it is not told since when, or for how many hours",
    "Write: left the kale on the counter since yesterday, or: left the melon on the counter for 2 hours.",
  );
}

/** What a line says that begins with none of the words known: how ripe, how good, how much is left. */
function stateLine(context: HappenedContext, line: string): Record<string, unknown>[] {
  const left = words.leftBeginning.test(line)
    ? line.replace(words.leftBeginning, "")
    : words.leftEnding.test(line)
      ? line.replace(words.leftEnding, "")
      : undefined;
  if (left !== undefined) return amountsOf(context, left).map(({ lot, amount }) => ({ lot, left: amount }));
  if (words.spoiledEnding.test(line) && !words.denied.test(line)) {
    const spoiled = amountsOf(context, bare(line.replace(words.spoiledEnding, "")));
    return spoiled.map(({ lot, amount }) => ({ lot, thrownOut: amount }));
  }
  if (words.frozenEnding.test(line) && !words.denied.test(line)) {
    const frozen = amountsOf(context, bare(line.replace(words.frozenEnding, "")));
    return frozen.map(({ lot, amount }) => ({ lot, frozen: amount }));
  }
  if (words.goneEnding.test(line))
    return namesOf(context, line.replace(words.goneEnding, "")).map((lot) => ({ lot, left: "none" }));
  if (words.limpEnding.test(line))
    throw new Unreadable(
      "account of its look",
      "it says how it looks, and not whether it is still eaten",
      "Write: lettuce still good; or: threw out the lettuce.",
    );
  const lies = words.lies.exec(line);
  if (lies) return movedLots(context, line.replace(words.lies, " "));
  const ripe = words.ripenessEndings.find(([, pattern]) => pattern.test(line));
  const said = ripe?.[1] ?? words.goodEnding;
  if (words.denied.test(line.replace(said, "")))
    throw new Unreadable(
      "account of what is not so",
      "it says what is not so",
      "Write what is so: kale still good; avocados unripe.",
    );
  const name = (pattern: RegExp) => line.replace(pattern, "").replace(words.isWords, "");
  if (ripe) return namesOf(context, name(ripe[1])).map((lot) => ({ lot, ripeness: ripe[0] }));
  if (words.goodEnding.test(line))
    return namesOf(context, name(words.goodEnding)).map((lot) => ({ lot, seenGood: true }));
  throw new Unreadable("account line not understood", "it is not understood", examples);
}

const fieldOf = {
  ate: "eaten",
  "threw out": "thrownOut",
  "gave away": "givenAway",
  froze: "frozen",
} as const;

function readLine(context: HappenedContext, line: string, into: ReadAccount): void {
  if (words.excepted.test(line))
    throw new Unreadable(
      "account of both",
      "it says what is so and what is not in one line",
      "Write a line for each thing.",
    );
  if (words.ateNothing.test(line)) {
    into.followed = false;
    return;
  }
  const found = words.beginnings.find(([, pattern]) => pattern.test(line));
  if (!found) {
    into.lots.push(...stateLine(context, line));
    return;
  }
  const moved = found[0] === "moved" && words.toFreezer.test(line);
  const said = moved ? "froze" : found[0];
  const phrase = line
    .replace(found[1], "")
    .replace(moved ? words.toFreezer : /\s+(?:out|away)$/u, "")
    .trim();
  if (said === "came home" || said === "found") into.cameHome.push(...cameHome(context, phrase, said));
  else if (said === "moved") into.lots.push(...movedLots(context, phrase));
  else if (said === "left lying") into.lots.push(...leftLying(context, phrase));
  else if (said === "left out") into.lots.push(...leftOut(context, line.replace(found[1], "")));
  else if (said === "cut") {
    const { rest, date } = clearDayAtEnd(context.on, phrase);
    into.lots.push(...namesOf(context, rest).map((lot) => ({ lot, cut: date ?? cutUndated })));
  } else if (said === "ate none")
    into.lots.push(...namesOf(context, phrase).map((lot) => ({ lot, eaten: "none" })));
  else {
    const field = fieldOf[said];
    const { rest } = dayAtEnd(context.on, phrase);
    const given = said === "gave away" ? rest.replace(words.givenTo, "") : rest;
    into.lots.push(...amountsOf(context, bare(given)).map(({ lot, amount }) => ({ lot, [field]: amount })));
  }
}

/**
 * Reads what a person typed of what happened, a thing a line (or parted by semicolons): the amounts and kinds by the reader of hauls. Throws HappenedError naming every line that is
 * not understood: none is passed over.
 */
export function readHappened(text: string, context: HappenedContext): ReadAccount {
  const account: ReadAccount = { version: 1, lots: [], cameHome: [] };
  const findings: Finding[] = [];
  accountLines(text, context.on).forEach((line) => {
    try {
      readLine(context, line, account);
    } catch (error) {
      if (!(error instanceof Unreadable)) throw error;
      const { message: value, remedy, code, values } = error;
      const name = shownValue(line);
      findings.push({ thing: `happened ${name}`, value, remedy, ...told(code, { line: name, ...values }) });
    }
  });
  if (findings.length > 0) throw new HappenedError(findings);
  return account;
}
