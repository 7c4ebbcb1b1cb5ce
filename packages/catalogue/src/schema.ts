import { z } from "zod";
import { atTemperature, evidence, figure, ordered, orderMessage, range } from "./figures.js";

export const classes = ["very low", "low", "moderate", "high", "very high"] as const;
export type Class = (typeof classes)[number];
const classed = z.strictObject({ class: z.enum(classes), ...evidence });

const names = z.strictObject({
  one: z.string().min(1),
  many: z.string().min(1),
  /** Other names: regional, varietal, older spellings. */
  also: z.array(z.string().min(1)).default([]),
  /** What people of some regions mostly call it (common practice, from memory): each has to be a name it is found by. */
  regional: z
    .array(
      z.strictObject({
        /** ISO 3166 codes. */
        of: z.array(z.string().regex(/^[A-Z]{2}$/)).min(1),
        one: z.string().min(1),
        many: z.string().min(1),
      }),
    )
    .optional(),
});

export const organs = [
  "fruit",
  "berry",
  "citrus",
  "melon",
  "fruit vegetable",
  "leaf",
  "head",
  "stem",
  "flower",
  "root",
  "tuber",
  "bulb",
  "seed",
  "fungus",
  "herb",
] as const;

/** What covers the eaten part where it meets the air: it rules water loss and decay, and so tells which kinds are alike. */
export const skins = [
  "rind",
  "waxed skin",
  "downy skin",
  "husk or pod",
  "papery scales",
  "cork",
  "root skin",
  "leaf or stem",
  "bare",
] as const;

/** Names of things to do before putting away; their words are made in `handout`. */
export const preparations = [
  "keep dry and unwashed",
  "twist off leaves",
  "trim stem ends",
  "remove bands and bruised leaves",
  "dry well",
  "keep husk on",
  "keep in the dark",
  "cure first",
  "sort out damaged pieces",
  "wrap crown",
  "keep on the vine",
  "wash just before use",
  "leave whole",
  "break up bunch",
  "remove from sealed bag",
] as const;

export const eatingEffects = [
  "flavour loss",
  "sweetening",
  "blackening",
  "hard core",
  "mealiness",
  "starchiness",
  "toughening",
  "skin browning",
] as const;
export const ethyleneInjuries = [
  "bitterness",
  "russet spotting",
  "yellowing",
  "sprouting",
  "toughening",
  "leaf drop",
  "browning",
] as const;

const production = z
  .strictObject({
    /** "any" where the kind does not ripen. */
    ripeness: z.enum(["unripe", "ripe", "any"]),
    temperature: z.number().min(-5).max(45).describe("°C"),
    low: z.number().min(0),
    high: z.number().min(0),
    unit: z.literal("µL/(kg h)"),
    ...evidence,
  })
  .refine(ordered, orderMessage);

const ripening = z.strictObject({
  /** Ripeness usual on arrival when the person does not say: 0 mature but unripe, 1 ready to eat, 2 over-ripe. */
  arrives: figure("ripeness", 0, 2),
  /** Days from mature-unripe to ready to eat at 20 °C in ordinary indoor air. */
  daysToRipe: figure("d at 20 °C", 0.5, 60),
  /** Temperature at and below which ripening stops. */
  minimum: figure("°C", -2, 16),
  /** Temperature above which ripening goes wrong. */
  maximum: figure("°C", 20, 40),
  /** Days from ready to eat to over-ripe, at the temperature beside it. */
  ripeLife: z.strictObject({
    temperature: z.number().describe("°C"),
    value: z.number().min(0.2),
    low: z.number().min(0.1).optional(),
    high: z.number().optional(),
    unit: z.literal("d"),
    ...evidence,
  }),
  /** How strongly outside ethylene speeds ripening: order of Wills et al. 2001. */
  ethyleneResponse: classed,
});

const chilling = z.strictObject({
  /** Lowest safe temperature while unripe (or at all, for kinds that do not ripen). */
  threshold: figure("°C", 0, 20),
  /** Lowest safe temperature once ripe, where it differs. */
  thresholdWhenRipe: figure("°C", -2, 20).optional(),
  /** Days until injury shows after warming, at one or more temperatures below the threshold. */
  injury: z.array(atTemperature("d", 0.1)).min(1),
  symptoms: z.string().min(1),
});

const household = z.strictObject({
  /** Mass per volume as it lies loose in a drawer. */
  bulkDensity: figure("kg/m³", 15, 1000),
  /** Household units: "each", "each small", "bunch", "head", "bag", "stalk", "clove", "pint", "cup", "ear", "hand" … */
  units: z
    .array(
      z.strictObject({
        name: z.string().min(1),
        grams: z.number().positive(),
        low: z.number().optional(),
        high: z.number().optional(),
        ...evidence,
      }),
    )
    .min(1),
  /** Unit meant when a bare count is typed ("3 avocados"), and when a bare name is typed ("cilantro"). */
  countUnit: z.string().min(1),
  bareUnit: z.string().min(1),
  portion: figure("g", 1, 400),
  /** Eaten beside other food in small amounts (herbs, garlic, lemon, chilli): takes no place at the table. */
  seasoning: z.boolean(),
});

export const commoditySchema = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/, "use lower-case words joined by hyphens, as in the file name"),
  names: z.strictObject({ en: names, es: names }),
  family: z.string().min(1),
  organ: z.enum(organs),
  skin: z.enum(skins),
  /** Ripening is started by ethylene and comes with a rise of respiration; kinds sold ready to eat give no `ripening`. */
  climacteric: z.boolean(),
  storage: z.strictObject({
    temperature: range("°C", -3, 25),
    relativeHumidity: range("%", 30, 100),
    /** Days at that temperature and humidity. */
    life: range("d", 0.5, 400),
    freezingPoint: figure("°C", -5, 0),
  }),
  respiration: z.array(atTemperature("mg CO2/(kg h)")).min(2),
  ethylene: z.strictObject({
    production: z.array(production).min(1),
    sensitivity: classed,
    /** Named injuries: shown after `days` at `temperature` in `concentration`; none at or below `onlyAbove`. */
    injuries: z
      .array(
        z.strictObject({
          effect: z.enum(ethyleneInjuries),
          concentration: z.number().positive().describe("µL/L"),
          days: z.number().positive(),
          temperature: z.number().describe("°C"),
          onlyAbove: z.number().optional().describe("°C"),
          ...evidence,
        }),
      )
      .default([]),
  }),
  water: z.strictObject({
    transpiration: figure("ng/(kg s Pa)", 0.1, 100_000),
    /** The same with the leaves left on, for roots sold bunched. */
    transpirationWithTops: figure("ng/(kg s Pa)", 0.1, 100_000).optional(),
    maximumLoss: figure("%", 1, 60),
  }),
  chilling: chilling.optional(),
  ripening: ripening.optional(),
  /** Soft: mould anywhere means that the whole piece is thrown away; firm: it may be cut away with an inch around it (FSIS). */
  decay: z.strictObject({ proneness: classed, flesh: z.enum(["firm", "soft"]) }),
  /** Days until sprouts or roots show, at the temperatures given (dark, ordinary air). */
  sprouting: z.array(atTemperature("d", 1)).default([]),
  /** Turns green (and bitter) in light: potatoes. */
  greensInLight: z.strictObject({ days: z.number().positive(), ...evidence }).optional(),
  /** Spoils eating before it ends life: days in the temperature window until the full loss of quality (0…1). */
  eatingEffects: z
    .array(
      z.strictObject({
        effect: z.enum(eatingEffects),
        below: z.number().optional().describe("°C"),
        above: z.number().optional().describe("°C"),
        days: z.number().positive(),
        loss: z.number().min(0).max(1),
        ...evidence,
      }),
    )
    .default([]),
  cut: z.strictObject({
    /** Days of good quality once cut, at 5 °C, wrapped. */
    life: figure("d", 0.2, 30),
    /** Time and temperature control for safety: cut melon, cut tomato, cut leafy greens, sprouts, peeled or cooked produce. */
    timeTemperatureControl: z.strictObject({ value: z.boolean(), ...evidence }),
  }),
  /** Sold as it is under time and temperature control, before anybody cuts it at home: ready-washed cut leaves, seed sprouts. */
  controlledAsSold: z.strictObject({ value: z.literal(true), ...evidence }).optional(),
  /** Bulbs cured and kept dry, told to be kept out of home refrigerators, which are usually too humid for them. */
  dryOutOfRefrigerator: z.strictObject({ value: z.literal(true), ...evidence }).optional(),
  /** Raw it can make people ill: whoever gets a plan with it is told to cook it through. */
  mustBeCooked: z.strictObject({ value: z.literal(true), ...evidence }).optional(),
  /** Does it keep with its stems in a glass of water? */
  standsInWater: z.strictObject({ value: z.boolean(), ...evidence }).optional(),
  household,
  preparation: z.array(z.strictObject({ do: z.enum(preparations), ...evidence })).default([]),
});
export type Commodity = z.infer<typeof commoditySchema>;
