import { commodityOf } from "@keepwright/catalogue";
import { trimsMould } from "@keepwright/planner";
import { limitWords } from "../../words/amounts.js";
import type { ClassContext } from "../classContext.js";
import { limitOf } from "../myths/bearing.js";
import type { Asker, Choice } from "./question.js";

const numbers = (wrong: readonly number[], words: (count: number) => string): Choice[] =>
  wrong.map((count) => ({ key: String(count), text: words(count) }));

/** Wrong on purpose: each is longer than the limit allows, times as people say them. */
const tooManyHours = [6, 12, 24];
const tooManyDays = [10, 14, 21];

const cutHours: Asker = {
  sort: "cut hours",
  least: 2,
  drafts(context) {
    const limit = limitOf(context, "refrigerate-cut-within");
    const hours = (count: number) => context.say("question.hours", { count });
    const [subject] = context.items;
    if (subject === undefined) return [];
    return [
      {
        sort: "cut hours",
        subject,
        question: context.say("question.cut hours"),
        right: { key: String(limit.value), text: hours(limit.value) },
        wrong: numbers(
          tooManyHours.filter((one) => one > limit.value),
          hours,
        ),
        inOrder: [limit.value, ...tooManyHours].map(String),
        eitherWay: true,
        why: () => context.say("question.why.cut hours"),
        evidence: [limit],
      },
    ];
  },
};

const cutDays: Asker = {
  sort: "cut days",
  topics: ["lasting", "signs"],
  least: 2,
  drafts(context) {
    const limit = limitOf(context, "cut-ready-to-eat-days");
    const cold = limitOf(context, "controlled-cold-holding-at-most");
    const days = (count: number) => context.say("question.days", { count });
    const { speaker, units } = context.handout;
    return context.items
      .filter((id) => commodityOf(context.catalogue, id).cut.timeTemperatureControl.value)
      .map((subject) => ({
        sort: "cut days",
        subject,
        question: context.say("question.cut days", {
          name: context.title(subject),
          degrees: limitWords(speaker, units, cold),
        }),
        right: { key: String(limit.value), text: days(limit.value) },
        wrong: numbers(
          tooManyDays.filter((one) => one > limit.value),
          days,
        ),
        inOrder: [limit.value, ...tooManyDays].map(String),
        eitherWay: true,
        why: () => context.say("question.why.cut days"),
        evidence: [limit, cold],
      }));
  },
};

type Mould = "throw" | "cut around" | "cut off" | "wash off" | "wipe off";
const mouldChoice = ({ say }: ClassContext, key: Mould): Choice => ({
  key,
  text: say(`question.mould.${key}`),
});

const mould: Asker = {
  sort: "mould",
  topics: ["signs"],
  least: 2,
  drafts: (context) =>
    context.items.flatMap((subject) => {
      const kind = commodityOf(context.catalogue, subject);
      const soft = kind.decay.flesh === "soft";
      // What is firm, and yet thrown away by its own advice, is not asked about.
      if (!soft && !trimsMould(subject)) return [];
      const name = context.title(subject);
      return {
        sort: "mould",
        subject,
        question: context.say("question.mould", { name }),
        right: mouldChoice(context, soft ? "throw" : "cut around"),
        wrong: (soft ? (["cut off", "wash off"] as const) : (["wipe off", "wash off"] as const)).map((key) =>
          mouldChoice(context, key),
        ),
        why: () => context.say(soft ? "question.why.mould.soft" : "question.why.mould.firm", { name }),
        evidence: [limitOf(context, soft ? "mould-on-soft-keep" : "mould-on-firm-cut-around")],
      };
    }),
};

/** Questions where a wrong answer can do harm. */
export const safetyQuestions: readonly Asker[] = [cutHours, cutDays, mould];
