import { commodityOf } from "@keepwright/catalogue";
import { temperatureWords } from "../../words/amounts.js";
import { spanWords } from "../../words/spans.js";
import type { ClassContext } from "../classContext.js";
import { coldest, everInCold, firstInCold, namesOfKinds, thoseWith } from "./bearing.js";
import type { Myth } from "./myth.js";

const degrees = ({ handout }: ClassContext, celsius: number): string =>
  temperatureWords(handout.speaker, handout.units, celsius);

const daysWords = ({ handout }: ClassContext, days: number): string => spanWords(handout.speaker, days, days);

type Effect = "flavour loss" | "sweetening" | "skin browning";
const effectOf = ({ catalogue }: ClassContext, id: string, effect: Effect) =>
  commodityOf(catalogue, id).eatingEffects.find((one) => one.effect === effect);

const has = (context: ClassContext, effect: Effect) => (id: string) =>
  effectOf(context, id, effect)?.below !== undefined;

const tomatoes: Myth = {
  id: "cold-tomato",
  againstCold: true,
  topics: ["places"],
  about: (context) =>
    context.items.filter(has(context, "flavour loss")).filter((id) => !everInCold(context, id)),
  tell: (context, about) => {
    const effect = effectOf(context, about[0]!, "flavour loss");
    return {
      said: context.say("myth.cold-tomato.said"),
      true: context.say("myth.cold-tomato.true", {
        names: namesOfKinds(context, about),
        degrees: degrees(context, effect?.below ?? 0),
        count: effect?.days ?? 0,
      }),
      why: context.say("myth.cold-tomato.why"),
    };
  },
  evidence: (context, about) => about.flatMap((id) => effectOf(context, id, "flavour loss") ?? []),
};

const hurt: Myth = {
  id: "cold-for-all",
  againstCold: true,
  topics: ["places"],
  about: (context) =>
    thoseWith(context, ({ chilling }) => (chilling?.threshold.value ?? -9) > (coldest(context) ?? 99)).filter(
      (id) => !everInCold(context, id),
    ),
  tell: (context, about) => ({
    said: context.say("myth.cold-for-all.said"),
    true: context.say("myth.cold-for-all.true", {
      limits: context.handout.speaker.list(
        about.map((id) =>
          context.say("myth.cold-for-all.limit", {
            name: context.name(id),
            degrees: degrees(context, commodityOf(context.catalogue, id).chilling?.threshold.value ?? 0),
          }),
        ),
      ),
    }),
    why: context.say("myth.cold-for-all.why"),
  }),
  evidence: ({ catalogue }, about) =>
    about.flatMap((id) => commodityOf(catalogue, id).chilling?.threshold ?? []),
};

const bananas: Myth = {
  id: "cold-banana",
  topics: ["places", "ripening"],
  about: (context) => context.items.filter((id) => id === "banana" && everInCold(context, id)),
  tell: (context, about) => ({
    said: context.say("myth.cold-banana.said"),
    true: context.say("myth.cold-banana.true", {
      degrees: degrees(context, commodityOf(context.catalogue, about[0]!).chilling?.threshold.value ?? 0),
    }),
    why: context.say("myth.cold-banana.why"),
  }),
  evidence: (context, about) =>
    about.flatMap((id) => [
      commodityOf(context.catalogue, id).chilling!.threshold,
      effectOf(context, id, "skin browning")!,
    ]),
};

const potatoes: Myth = {
  id: "cold-potato",
  againstCold: true,
  topics: ["places"],
  about: (context) =>
    context.items.filter(
      (id) => id === "potato" && has(context, "sweetening")(id) && !everInCold(context, id),
    ),
  tell: (context, about) => ({
    said: context.say("myth.cold-potato.said"),
    true: context.say("myth.cold-potato.true", {
      degrees: degrees(context, effectOf(context, about[0]!, "sweetening")?.below ?? 0),
      span: daysWords(context, effectOf(context, about[0]!, "sweetening")?.days ?? 0),
    }),
    why: context.say("myth.cold-potato.why"),
  }),
  evidence: (context, about) => about.flatMap((id) => effectOf(context, id, "sweetening") ?? []),
};

const ripensInCold: Myth = {
  id: "cold-ripens",
  topics: ["ripening", "places"],
  about: (context) =>
    thoseWith(
      context,
      ({ ripening }) =>
        ripening !== undefined &&
        ripening.arrives.value < 1 &&
        ripening.minimum.value >= (coldest(context) ?? 99),
    ).filter((id) => !firstInCold(context, id)),
  tell: (context, about) => ({
    said: context.say("myth.cold-ripens.said"),
    true: context.say("myth.cold-ripens.true", { names: namesOfKinds(context, about) }),
    why: context.say("myth.cold-ripens.why"),
  }),
  evidence: ({ catalogue }, about) =>
    about.flatMap((id) => commodityOf(catalogue, id).ripening?.minimum ?? []),
};

/** Sayings about the cold. Each is told only where it agrees with where the answer sheets put the kind. */
export const coldMyths: readonly Myth[] = [tomatoes, hurt, bananas, potatoes, ripensInCold];
