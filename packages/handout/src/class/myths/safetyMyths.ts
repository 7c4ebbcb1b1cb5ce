import type { SafetyLimit } from "@keepwright/catalogue";
import { trimsMould } from "@keepwright/planner";
import { limitWords } from "../../words/amounts.js";
import type { ClassContext } from "../classContext.js";
import { limitOf, namesOfKinds, thoseWith } from "./bearing.js";
import type { Myth } from "./myth.js";

const limits = (context: ClassContext, ...ids: readonly string[]): SafetyLimit[] =>
  ids.map((id) => limitOf(context, id));

const mouldSoft: Myth = {
  id: "mould-soft",
  topics: ["signs"],
  about: (context) => thoseWith(context, ({ decay }) => decay.flesh === "soft"),
  tell: (context, about) => ({
    said: context.say("myth.mould-soft.said"),
    true: context.say("myth.mould-soft.true", { names: namesOfKinds(context, about) }),
    why: context.say("myth.mould-soft.why"),
  }),
  evidence: (context) => limits(context, "mould-on-soft-keep"),
};

/** A length as both sorts of readers know it. */
const sizeWords = ({ handout, say }: ClassContext, centimetres: number): string =>
  say("size.cut", { centimetres: handout.speaker.number(centimetres) });

const mouldFirm: Myth = {
  id: "mould-firm",
  topics: ["signs", "saving"],
  about: (context) => thoseWith(context, ({ id }) => trimsMould(id)),
  tell: (context, about) => ({
    said: context.say("myth.mould-firm.said"),
    true: context.say("myth.mould-firm.true", {
      names: namesOfKinds(context, about),
      size: sizeWords(context, limitOf(context, "mould-on-firm-cut-around").value),
    }),
    why: context.say("myth.mould-firm.why"),
  }),
  evidence: (context) => limits(context, "mould-on-firm-cut-around"),
};

const looksFine: Myth = {
  id: "looks-fine",
  topics: ["signs", "lasting"],
  about: (context) => thoseWith(context, ({ cut }) => cut.timeTemperatureControl.value),
  tell: (context, about) => ({
    said: context.say("myth.looks-fine.said"),
    true: context.say("myth.looks-fine.true", {
      names: namesOfKinds(context, about),
      degrees: limitWords(
        context.handout.speaker,
        context.handout.units,
        limitOf(context, "controlled-cold-holding-at-most"),
      ),
      count: limitOf(context, "cut-ready-to-eat-days").value,
    }),
    why: context.say("myth.looks-fine.why"),
  }),
  evidence: (context) => limits(context, "controlled-cold-holding-at-most", "cut-ready-to-eat-days"),
};

const garlic: Myth = {
  id: "garlic-oil",
  topics: ["saving"],
  about: ({ items }) => items.filter((id) => id === "garlic"),
  tell: (context) => ({
    said: context.say("myth.garlic-oil.said"),
    true: context.say("myth.garlic-oil.true", {
      count: limitOf(context, "garlic-in-oil-refrigerated-days").value,
    }),
    why: context.say("myth.garlic-oil.why"),
  }),
  evidence: (context) => limits(context, "garlic-in-oil-refrigerated-days"),
};

const green: Myth = {
  id: "green-potato",
  topics: ["signs"],
  about: (context) => thoseWith(context, ({ greensInLight }) => greensInLight !== undefined),
  tell: ({ say }) => ({
    said: say("myth.green-potato.said"),
    true: say("myth.green-potato.true"),
    why: say("myth.green-potato.why"),
  }),
  evidence: (context) => limits(context, "potato-glycoalkaloids"),
};

/** Sayings where believing them can do harm: these come first. */
export const safetyMyths: readonly Myth[] = [mouldSoft, looksFine, garlic, green, mouldFirm];
