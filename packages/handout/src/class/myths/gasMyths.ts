import { commodityOf, type Evidence } from "@keepwright/catalogue";
import { givesMuchEthylene, harmedByEthylene } from "../../answer/apart.js";
import { namesOfKinds, thoseWith } from "./bearing.js";
import type { Myth } from "./myth.js";

/** Mean ethylene in home refrigerators with and without apples [µL/L], by the first of these; what it does, by the second. */
const inRefrigerators = { withApples: 0.2, without: 0.029 };
const measured: readonly Evidence[] = [
  {
    source: "wills-2000",
    place: "mean of home refrigerators with apples 0.20, without 0.029 µL/L (abstract read)",
    kind: "measured",
    fromMemory: false,
  },
  {
    source: "wills-1999",
    place: "life of 23 kinds below 0.005 µL/L 1.6 times that at 0.1 µL/L (abstract read)",
    kind: "measured",
    fromMemory: false,
  },
];

/** Fruit that does and does not ripen off the plant: told in every textbook; the page was not at hand. */
const ripeningLists: Evidence = {
  source: "kader-classes",
  place: "lists of fruit that ripen after picking and of fruit that do not",
  kind: "measured",
  fromMemory: true,
};

const gas: Myth = {
  id: "gas",
  topics: ["apart"],
  about: (context) => {
    const givers = thoseWith(context, givesMuchEthylene);
    const takers = thoseWith(context, (kind) => harmedByEthylene(kind) && !givesMuchEthylene(kind));
    return givers.length > 0 && takers.length > 0 ? [...givers, ...takers] : [];
  },
  tell: (context, about) => {
    const gives = (id: string) => givesMuchEthylene(commodityOf(context.catalogue, id));
    return {
      said: context.say("myth.gas.said"),
      true: context.say("myth.gas.true", {
        givers: namesOfKinds(context, about.filter(gives)),
        takers: context.handout.speaker.list(about.filter((id) => !gives(id)).map(context.name)),
        times: Math.round(inRefrigerators.withApples / inRefrigerators.without),
      }),
      why: context.say("myth.gas.why"),
    };
  },
  evidence: () => measured,
};

const fruit = ["fruit", "berry", "citrus"];

const ripensLater: Myth = {
  id: "ripens-later",
  topics: ["ripening"],
  about: (context) =>
    thoseWith(
      context,
      ({ climacteric, ripening, organ }) => !climacteric && !ripening && fruit.includes(organ),
    ),
  tell: (context, about) => ({
    said: context.say("myth.ripens-later.said"),
    true: context.say("myth.ripens-later.true", { names: namesOfKinds(context, about) }),
    why: context.say("myth.ripens-later.why"),
  }),
  evidence: () => [ripeningLists],
};

const onions: Myth = {
  id: "onion-potato",
  topics: ["apart"],
  about: ({ items }) => {
    const both = items.filter((id) => id === "onion" || id === "potato");
    return both.length === 2 ? both : [];
  },
  tell: ({ say }) => ({
    said: say("myth.onion-potato.said"),
    true: say("myth.onion-potato.true"),
    why: say("myth.onion-potato.why"),
  }),
  evidence: ({ catalogue }) => [
    ...commodityOf(catalogue, "onion").ethylene.production,
    ...commodityOf(catalogue, "potato").ethylene.injuries,
    { ...commodityOf(catalogue, "potato").ethylene.sensitivity, place: disagreement },
  ],
};

/** Where the catalogue's note on potatoes says that studies disagree. */
const disagreement =
  "row potato, late crop; Wills & Warton 2004 (abstract read) found sprouts sooner, Prange et al. 1998 (abstract read) later";

const crown: Myth = {
  id: "banana-crown",
  topics: ["ripening", "lasting"],
  about: (context) =>
    thoseWith(context, ({ preparation }) => preparation.some((step) => step.do === "wrap crown")),
  tell: ({ say }) => ({
    said: say("myth.banana-crown.said"),
    true: say("myth.banana-crown.true"),
    why: say("myth.banana-crown.why"),
  }),
  evidence: ({ catalogue }, about) =>
    about.flatMap((id) => commodityOf(catalogue, id).preparation.filter((step) => step.do === "wrap crown")),
};

/** Sayings about ripening and its gas. */
export const gasMyths: readonly Myth[] = [gas, ripensLater, onions, crown];
