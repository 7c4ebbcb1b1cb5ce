import { type Commodity, commodityOf, type Evidence } from "@keepwright/catalogue";
import { givesMuchEthylene } from "../../answer/apart.js";
import type { ClassContext } from "../classContext.js";
import { kindsOf } from "../myths/bearing.js";
import type { Asker, Choice } from "./question.js";

export const choiceOf = (context: ClassContext, { id }: Pick<Commodity, "id">): Choice => ({
  key: id,
  text: context.title(id),
});

/** Ethylene [µL/(kg h)] at room temperature below which a kind is no giver beyond doubt: a tenth of what is called much. A declared preference, no source. */
const littleEthylene = 1;

const most = ({ ethylene }: Commodity): number =>
  Math.max(...ethylene.production.filter(({ temperature }) => temperature <= 25).map(({ high }) => high));

const giver: Asker = {
  sort: "gas giver",
  topics: ["apart"],
  least: 2,
  drafts(context) {
    const kinds = kindsOf(context);
    const wrong = kinds.filter((kind) => most(kind) < littleEthylene).map((kind) => choiceOf(context, kind));
    return kinds.filter(givesMuchEthylene).map((kind) => ({
      sort: "gas giver",
      subject: kind.id,
      question: context.say("question.gas giver"),
      right: choiceOf(context, kind),
      wrong,
      why: () => context.say("question.why.gas giver", { name: context.title(kind.id) }),
      evidence: kind.ethylene.production,
    }));
  },
};

const harmedMuch = ["high", "very high"];
const harmedLittle = ["very low", "low"];

const harmed: Asker = {
  sort: "gas harmed",
  topics: ["apart"],
  least: 2,
  drafts(context) {
    const kinds = kindsOf(context);
    const wrong = kinds
      .filter(({ ethylene }) => harmedLittle.includes(ethylene.sensitivity.class))
      .map((kind) => choiceOf(context, kind));
    return kinds
      .filter(({ ethylene }) => harmedMuch.includes(ethylene.sensitivity.class))
      .map((kind) => ({
        sort: "gas harmed",
        subject: kind.id,
        question: context.say("question.gas harmed"),
        right: choiceOf(context, kind),
        wrong,
        why: () => context.say("question.why.gas harmed", { name: context.title(kind.id) }),
        evidence: [kind.ethylene.sensitivity],
      }));
  },
};

const fruit = ["fruit", "berry", "citrus"];

/** Whether it gets ripe at home; undefined where the catalogue does not settle it. */
export function ripensAtHome({ climacteric, ripening, organ }: Commodity): boolean | undefined {
  if (climacteric && ripening && ripening.arrives.value < 1) return true;
  return !climacteric && !ripening && fruit.includes(organ) ? false : undefined;
}

const lists = "lists of fruit that ripen after picking and of fruit that do not";

/** Where it comes from whether a kind gets ripe at home. */
export const ripensEvidence = ({ ripening }: Commodity): Evidence[] =>
  ripening
    ? [ripening.daysToRipe]
    : [{ source: "kader-classes", place: lists, kind: "measured", fromMemory: true }];

const ripens: Asker = {
  sort: "ripens",
  topics: ["ripening"],
  least: 1,
  drafts(context) {
    const yes = { key: "yes", text: context.say("question.yes") };
    const no = { key: "no", text: context.say("question.no") };
    return context.items.flatMap((id) => {
      const kind = commodityOf(context.catalogue, id);
      const does = ripensAtHome(kind);
      if (does === undefined) return [];
      const name = context.title(id);
      return {
        sort: "ripens" as const,
        subject: id,
        question: context.say("question.ripens", { name }),
        right: does ? yes : no,
        wrong: [does ? no : yes],
        inOrder: ["yes", "no"],
        why: () => context.say(does ? "question.why.ripens.yes" : "question.why.ripens.no", { name }),
        evidence: ripensEvidence(kind),
      };
    });
  },
};

/** Questions about ripening and its gas. */
export const gasQuestions: readonly Asker[] = [giver, harmed, ripens];
