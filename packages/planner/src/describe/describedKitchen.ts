import { coldestPlace, contradictions, farthestFromRoom } from "../problem/contradictions.js";
import type { Kitchen, Place } from "../problem/kitchen.js";
import { kitchenBounds } from "../problem/kitchen.js";
import { kitchenFigures as figure } from "../problem/kitchenFigures.js";
import {
  balcony,
  cellar,
  counter,
  cupboardShelf,
  cupboardTemperature,
  door,
  drawer,
  ordinaryLitres,
  ordinaryWraps,
  plainDrawer,
  refrigerator,
  room,
  shelf,
  smallLitres,
} from "../problem/kitchenParts.js";
import type { KitchenAnswers, KitchenQuestion } from "./kitchenAnswers.js";
import { type AnswerFault, AnswerReader } from "./readAnswer.js";

/** The kitchen that the answers describe, and every answer that will not do. */
export interface DescribedKitchen {
  /** To be planned with only where there are no faults. */
  readonly kitchen: Kitchen;
  readonly faults: readonly AnswerFault[];
}

/**
 * Puts a kitchen together from what a person said of it. Where nothing was said, or it is not known, the ordinary kitchen
 * stands: no answer at all gives the ordinary kitchen. Every figure is one of kitchenFigures; room for produce grows with
 * the refrigerator's litres as in the ordinary kitchen (inferred). Never throws.
 */
export function describedKitchen(answers: KitchenAnswers, name: string): DescribedKitchen {
  const reader = new AnswerReader();
  const warm = roomTemperature(answers, reader);
  const cold = coldTemperature(answers, reader);
  const litres = airLitres(answers, reader);
  const none = answers.refrigerator === "none";
  const kitchen: Kitchen = {
    version: 1,
    name,
    room: { ...room(warm), relativeHumidity: humidity(answers, reader) },
    refrigerators: none ? [] : [refrigerator(litres, cold)],
    places: [
      ...(none ? [] : insideRefrigerator(answers, litres, cold)),
      counter(ordinaryLitres.counter, warm),
      ...cupboard(answers, warm),
      ...below(answers, reader),
    ],
    wraps: answers.wraps ? [...answers.wraps] : ordinaryWraps,
  };
  return { kitchen, faults: [...reader.faults, ...contradicting(kitchen, answers)] };
}

function airLitres({ refrigerator: size, litres }: KitchenAnswers, reader: AnswerReader): number {
  if (size === "hip") return figure.smallRefrigeratorLitres.value;
  if (size === "overhead") return figure.largeRefrigeratorLitres.value;
  // The litres told on a refrigerator are taken for its air: declared preference, no source.
  const told =
    size === "litres" ? reader.number("refrigerator", litres, kitchenBounds.litres, "L") : undefined;
  return told ?? figure.refrigeratorLitres.value;
}

function coldTemperature({ cold, coldReading }: KitchenAnswers, reader: AnswerReader): number {
  if (cold === "freezes") return figure.coldWhereThingsFreeze.value;
  if (cold === "turns") return figure.coldWhereMilkTurns.value;
  const read = cold === "reading" ? reader.celsius("cold", coldReading) : undefined;
  return read ?? figure.refrigeratorTemperature.value;
}

function roomTemperature({ room: sign, roomReading }: KitchenAnswers, reader: AnswerReader): number {
  if (sign === "cool") return figure.coolRoomTemperature.value;
  if (sign === "hot") return figure.hotRoomTemperature.value;
  const read = sign === "reading" ? reader.celsius("room", roomReading) : undefined;
  return read ?? figure.roomTemperature.value;
}

function humidity({ air, airReading }: KitchenAnswers, reader: AnswerReader): number {
  if (air === "dry") return figure.dryRoomHumidity.value;
  if (air === "damp") return figure.dampRoomHumidity.value;
  const read = air === "reading" ? reader.number("air", airReading, kitchenBounds.humidity, "%") : undefined;
  return read ?? figure.roomHumidity.value;
}

/** Names of drawers by how many there are; the ids stay the same, so that what lies in one stays there when another comes. */
const drawerNames: readonly (readonly string[])[] = [
  [],
  ["Drawer"],
  ["Left drawer", "Right drawer"],
  ["Upper drawer", "Left drawer", "Right drawer"],
  ["Upper left drawer", "Upper right drawer", "Left drawer", "Right drawer"],
];
const drawerIds: readonly (readonly string[])[] = [
  [],
  ["left-drawer"],
  ["left-drawer", "right-drawer"],
  ["upper-drawer", "left-drawer", "right-drawer"],
  ["upper-drawer", "upper-right-drawer", "left-drawer", "right-drawer"],
];

function insideRefrigerator(answers: KitchenAnswers, litres: number, cold: number): readonly Place[] {
  const share = litres / figure.refrigeratorLitres.value;
  // Never nothing: of a refrigerator of one litre the door would round to a place without room, which no kitchen may have.
  const rounded = (ordinary: number) => Math.max(0.1, Math.round(ordinary * share * 10) / 10);
  const small = answers.refrigerator === "hip";
  const usual = small ? ([] as const) : (["unknown", "unknown"] as const);
  const drawers = answers.drawers ?? usual;
  return [
    shelf(small ? smallLitres.shelf : rounded(ordinaryLitres.shelf), cold),
    ...(answers.door === false ? [] : [door(small ? smallLitres.door : rounded(ordinaryLitres.door), cold)]),
    ...drawers.flatMap((sort, index) => {
      const id = drawerIds[drawers.length]?.[index];
      const name = drawerNames[drawers.length]?.[index];
      if (id === undefined || name === undefined) return [];
      const make = sort === "plain" ? plainDrawer : drawer;
      return [make(id, name, rounded(ordinaryLitres.drawer), cold)];
    }),
  ];
}

function cupboard({ cupboard: sort }: KitchenAnswers, warm: number): readonly Place[] {
  if (sort === "none") return [];
  const temperature = sort === "warm" ? warm : cupboardTemperature(warm);
  return [
    cupboardShelf("cupboard-upper", "Cupboard, upper shelf", ordinaryLitres.cupboardShelf, temperature),
    cupboardShelf("cupboard-lower", "Cupboard, lower shelf", ordinaryLitres.cupboardShelf, temperature),
  ];
}

/** A cellar without a reading is an ordinary one; a balcony without one is left out, for no weather is the ordinary one. */
function below(answers: KitchenAnswers, reader: AnswerReader): readonly Place[] {
  const deep = answers.cellar ? reader.celsius("cellar", answers.cellarReading) : undefined;
  const out = answers.balcony ? reader.celsius("cellar", answers.balconyReading) : undefined;
  return [
    ...(answers.cellar ? [cellar(deep ?? figure.cellarTemperature.value)] : []),
    ...(out === undefined ? [] : [balcony(out)]),
  ];
}

/** What the check of kitchens finds contradictory, laid at the answer that can mend it. */
function contradicting(kitchen: Kitchen, answers: KitchenAnswers): readonly AnswerFault[] {
  const faults = contradictions(kitchen).map((finding): AnswerFault => {
    const place = kitchen.places.find(({ id }) => finding.thing.includes(`"${id}"`));
    const outside = place !== undefined && place.refrigerator === undefined;
    const celsius = place?.temperature ?? kitchen.refrigerators[0]?.temperature ?? 0;
    const roomCelsius = kitchen.room.temperature;
    const question: KitchenQuestion = outside
      ? "cellar"
      : answers.cold === undefined && answers.room !== undefined
        ? "room"
        : "cold";
    if (celsius < coldestPlace) return { question, fault: "freezes", celsius };
    if (!outside && celsius >= roomCelsius)
      return { question, fault: "as warm as the room", celsius, room: roomCelsius };
    if (outside && celsius - roomCelsius > farthestFromRoom)
      return { question, fault: "warmer than the room", celsius, room: roomCelsius };
    return { question, fault: "other", told: `${finding.thing}: ${finding.value}. ${finding.remedy}` };
  });
  return faults.filter(
    (fault, index) => faults.findIndex((each) => each.question === fault.question) === index,
  );
}
