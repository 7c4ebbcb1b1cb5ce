import { relativesSource } from "@keepwright/catalogue";
import { shared, single, tabled } from "./figureRows.mjs";
import { signed } from "./numbers.mjs";

const celsius = (value) => `${signed(value)} °C`;
const yesNo = (value) => (value ? "yes" : "no");

const storageRows = ({ storage }) => [
  single("recommended temperature", storage.temperature),
  single("recommended relative humidity", storage.relativeHumidity),
  single("life at that temperature and humidity", storage.life),
  single("freezing point", storage.freezingPoint),
];

const breathingRows = ({ respiration }) => tabled("carbon dioxide given off", respiration);

const injuryText = ({ concentration, days, temperature, onlyAbove }) =>
  `shows after ${signed(days)} days in ${signed(concentration)} µL/L at ${celsius(temperature)}` +
  (onlyAbove === undefined ? "" : `; none at or below ${celsius(onlyAbove)}`);

const ethyleneRows = ({ ethylene }) => [
  ...tabled("ethylene given off", ethylene.production, ({ ripeness }) =>
    ripeness === "any" ? "" : `${ripeness}, `,
  ),
  shared("sensitivity to ethylene", ethylene.sensitivity.class, ethylene.sensitivity),
  ...ethylene.injuries.map((each) => shared(`harm by ethylene: ${each.effect}`, injuryText(each), each)),
];

const waterRows = ({ water, standsInWater }) => [
  single("water given off (transpiration coefficient)", water.transpiration),
  water.transpirationWithTops && single("the same with the leaves left on", water.transpirationWithTops),
  single("largest loss of weight before it is limp", water.maximumLoss),
  standsInWater &&
    shared("keeps with its stems in a glass of water", yesNo(standsInWater.value), standsInWater),
];

const chillingRows = ({ chilling }) =>
  chilling
    ? [
        single("lowest safe temperature", chilling.threshold),
        chilling.thresholdWhenRipe && single("lowest safe temperature once ripe", chilling.thresholdWhenRipe),
        ...tabled(`harm from cold shows after (${chilling.symptoms})`, chilling.injury),
      ]
    : [];

function ripeningRows({ ripening }) {
  if (!ripening) return [];
  const { arrives, daysToRipe, minimum, maximum, ripeLife, ethyleneResponse } = ripening;
  return [
    single("ripeness as it arrives (0 unripe, 1 ready to eat, 2 over-ripe)", arrives),
    single("time from unripe to ready to eat", daysToRipe),
    single("no ripening at or below", minimum),
    single("ripening goes wrong above", maximum),
    single(`time from ready to eat to over-ripe, at ${celsius(ripeLife.temperature)}`, ripeLife),
    shared("how strongly ethylene speeds ripening", ethyleneResponse.class, ethyleneResponse),
  ];
}

const decayRows = ({ decay }) => [
  shared("proneness to mould and rot", `${decay.proneness.class}; ${decay.flesh} flesh`, decay.proneness),
];

const windowText = ({ below, above, days, loss }) => {
  const window = [
    above !== undefined && `above ${celsius(above)}`,
    below !== undefined && `below ${celsius(below)}`,
  ].filter(Boolean);
  return `${window.join(" and ")}: ${signed(loss * 100)} % of the quality lost after ${signed(days)} days`;
};

const otherRows = ({ sprouting, greensInLight, eatingEffects }) => [
  ...tabled("sprouts or roots show after", sprouting),
  greensInLight && shared("turns green in light after", `${signed(greensInLight.days)} days`, greensInLight),
  ...eatingEffects.map((each) => shared(`spoils eating first: ${each.effect}`, windowText(each), each)),
];

const cutRows = ({ cut }) => [
  single("good quality once cut, at 5 °C and wrapped", cut.life),
  shared(
    "once cut: time and temperature controlled for safety",
    yesNo(cut.timeTemperatureControl.value),
    cut.timeTemperatureControl,
  ),
];

const householdRows = ({ household, preparation }) => [
  single("mass per volume as it lies loose", household.bulkDensity),
  ...household.units.map((unit) =>
    single(`weight of one unit: ${unit.name}`, { value: unit.grams, unit: "g", ...unit }),
  ),
  single("one portion", household.portion),
  ...preparation.map((step) => shared("before putting away", step.do, step)),
];

const odourRows = ({ id }, odours, nameOf) =>
  odours
    .filter(({ giver, taker }) => giver === id || taker === id)
    .map((pair) =>
      pair.giver === id
        ? shared("passes its smell to", nameOf(pair.taker), pair)
        : shared("takes the smell of", nameOf(pair.giver), pair),
    );

const guidanceRows = (guidance) =>
  guidance
    ? [
        shared("wraps that suit it", "as listed above", guidance.wraps),
        shared("season", "as told above", guidance.season),
        ...Object.entries({
          signs: "signs of ripe, going and to be thrown away",
          prepare: "before it is put away",
          trimmings: "trimmings",
          save: "freezing and saving",
          hazards: "what can hurt",
        }).map(([part, name]) => guidance.basis[part] && shared(name, "as told above", guidance.basis[part])),
      ]
    : [];

/** Every figure the model and the guidance use for a kind, in sections: [heading, rows]; sections without rows are left out. */
export function figureSections(kind, catalogue, guidance) {
  const nameOf = (id) => catalogue.commodities.get(id)?.names.en.many ?? id;
  return [
    ["Storage", storageRows(kind)],
    ["Breathing", breathingRows(kind)],
    ["Ethylene, the ripening gas", ethyleneRows(kind)],
    ["Water", waterRows(kind)],
    ["Harm from cold", chillingRows(kind)],
    ["Ripening", ripeningRows(kind)],
    ["Mould and rot", decayRows(kind)],
    ["Sprouting, light and flavour", otherRows(kind)],
    ["Once cut", cutRows(kind)],
    ["In the household", householdRows(kind)],
    ["Smells", odourRows(kind, catalogue.odours, nameOf)],
    ["Where the guidance comes from", guidanceRows(guidance)],
  ]
    .map(([heading, rows]) => [heading, rows.filter(Boolean)])
    .filter(([, rows]) => rows.length > 0);
}

/** How many of a kind's figures were inferred from its relatives. */
export const inferredRows = (sections) =>
  sections.flatMap(([, rows]) => rows).filter(({ evidence }) => evidence.source === relativesSource);
