import { commodityOf } from "@keepwright/catalogue";
import type { Asker, Choice } from "./question.js";

const lines = (list: string, texts: readonly string[]): Choice[] =>
  texts.map((text, index) => ({ key: `${list} ${index}`, text }));

const discard: Asker = {
  sort: "discard",
  topics: ["signs"],
  least: 2,
  drafts: (context) =>
    context.items.flatMap((subject) => {
      const told = context.guidance.get(subject);
      const [sign] = told?.words.discard ?? [];
      if (!told || sign === undefined) return [];
      const name = context.title(subject);
      return [
        {
          sort: "discard" as const,
          subject,
          question: context.say("question.discard", { name }),
          right: { key: "discard 0", text: sign },
          wrong: [...lines("going", told.words.going), ...lines("ripe", told.words.ripe)],
          why: () => context.say("question.why.discard"),
          evidence: [told.basis.signs],
        },
      ];
    }),
};

const unwashed = ["keep dry and unwashed", "wash just before use"];

const wash: Asker = {
  sort: "wash",
  topics: ["lasting", "places"],
  least: 2,
  drafts: (context) =>
    context.items.flatMap((subject) => {
      const { organ, preparation } = commodityOf(context.catalogue, subject);
      const steps = preparation.filter((step) => unwashed.includes(step.do));
      if (steps.length === 0 || organ === "bulb") return [];
      return [
        {
          sort: "wash" as const,
          subject,
          question: context.say("question.wash", { name: context.title(subject) }),
          right: { key: "before eating", text: context.say("question.wash.before eating") },
          wrong: (["at once", "in water"] as const).map((key) => ({
            key,
            text: context.say(`question.wash.${key}`),
          })),
          why: () => context.say("question.why.wash"),
          evidence: steps,
        },
      ];
    }),
};

/** Questions about signs and washing. */
export const careQuestions: readonly Asker[] = [discard, wash];
