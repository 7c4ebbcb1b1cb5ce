import { commodityOf, type Evidence } from "@keepwright/catalogue";
import { limitWords, temperatureWords } from "../../words/amounts.js";
import type { ClassContext } from "../classContext.js";
import { everInCold, limitOf, namesOfKinds, thoseWith } from "./bearing.js";
import type { Myth } from "./myth.js";

const degrees = ({ handout }: ClassContext, celsius: number): string =>
  temperatureWords(handout.speaker, handout.units, celsius);

const unwashed = ["keep dry and unwashed", "wash just before use"];
const isUnwashed = (step: { readonly do: string }): boolean => unwashed.includes(step.do);

const washing: Myth = {
  id: "wash-first",
  topics: ["lasting", "places"],
  about: (context) =>
    thoseWith(context, ({ organ, preparation }) => organ !== "bulb" && preparation.some(isUnwashed)),
  tell: (context, about) => ({
    said: context.say("myth.wash-first.said"),
    true: context.say("myth.wash-first.true", { names: namesOfKinds(context, about) }),
    why: context.say("myth.wash-first.why"),
  }),
  evidence: ({ catalogue }, about) =>
    about.flatMap((id) => commodityOf(catalogue, id).preparation.filter(isUnwashed)),
};

const soap: Myth = {
  id: "soap",
  topics: ["lasting", "signs"],
  about: ({ items }) => items,
  tell: ({ say }) => ({
    said: say("myth.soap.said"),
    true: say("myth.soap.true"),
    why: say("myth.soap.why"),
  }),
  evidence: (): Evidence[] => [
    {
      source: "fda-consumer",
      place: "washing produce: running water, no soap, scrub firm produce, just before use",
      kind: "recommended",
      fromMemory: true,
    },
  ],
};

const survey: readonly Evidence[] = [
  {
    source: "james-evans-1992",
    place: "Britain 1991: 29.9 % of 252 refrigerators had a mean below 5 °C (abstract read)",
    kind: "measured",
    fromMemory: false,
  },
  {
    source: "evans-2014",
    place: "112 homes: mean 4.4 °C, above 5 °C for 38 % of the time (news page read)",
    kind: "measured",
    fromMemory: false,
  },
];
/** By the first of them: homes, homes in 100 with a mean below [°C]. */
const found = { homes: 252, share: 30, below: 5 };

const refrigerator: Myth = {
  id: "fridge-cold",
  topics: ["places", "lasting"],
  about: (context) => context.items.filter((id) => everInCold(context, id)),
  tell: (context) => {
    const { speaker, units } = context.handout;
    return {
      said: context.say("myth.fridge-cold.said"),
      true: context.say("myth.fridge-cold.true", {
        homes: found.homes,
        share: found.share,
        degrees: degrees(context, found.below),
        limit: limitWords(speaker, units, limitOf(context, "refrigerator-at-most")),
      }),
      why: context.say("myth.fridge-cold.why"),
    };
  },
  evidence: (context) => [...survey, limitOf(context, "refrigerator-at-most")],
};

const tops: Myth = {
  id: "tops",
  topics: ["lasting"],
  about: (context) => thoseWith(context, ({ water }) => water.transpirationWithTops !== undefined),
  tell: (context, about) => ({
    said: context.say("myth.tops.said"),
    true: context.say("myth.tops.true", { names: namesOfKinds(context, about) }),
    why: context.say("myth.tops.why"),
  }),
  evidence: ({ catalogue }, about) =>
    about.flatMap((id) => commodityOf(catalogue, id).water.transpirationWithTops ?? []),
};

/** Sayings about washing, the refrigerator and leaves. */
export const careMyths: readonly Myth[] = [washing, soap, refrigerator, tops];
