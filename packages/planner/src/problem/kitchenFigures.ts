import type { Evidence } from "@keepwright/catalogue";

/** One figure of an ordinary kitchen with its unit and where it comes from. */
export interface KitchenFigure extends Evidence {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

const inferred = (value: number, low: number, high: number, unit: string, place: string): KitchenFigure => ({
  value,
  low,
  high,
  unit,
  source: "keepwright-inference",
  place,
  kind: "inferred",
  fromMemory: false,
});
const practice = (value: number, low: number, high: number, unit: string, place: string): KitchenFigure => ({
  value,
  low,
  high,
  unit,
  source: "common-practice",
  place,
  kind: "common practice",
  fromMemory: false,
});

/**
 * Figures of ordinary kitchens. No measured humidity, air exchange or door-opening figures for home refrigerators were
 * found, so those are inferred, say from what, and carry wide ranges.
 */
export const kitchenFigures = {
  refrigeratorTemperature: {
    value: 4.4,
    low: -0.6,
    high: 10.4,
    unit: "°C",
    source: "evans-2014",
    place: "mean, lowest and highest refrigerator mean of 112 UK households",
    kind: "measured",
    fromMemory: false,
  },
  refrigeratorSpread: inferred(
    1.5,
    1,
    2.5,
    "K",
    "range within one refrigerator at least 4.5 K in James & Evans 1992; taken as three standard deviations",
  ),
  doorWarmer: inferred(
    2,
    1,
    4,
    "K",
    "top shelf above 5 °C 58 % of the time against 26 % at the bottom in Evans et al. 2014; a door is opened to the room and taken to be no colder than the top",
  ),
  refrigeratorLitres: practice(200, 120, 320, "L", "air volume of a household refrigerator, partly filled"),
  refrigeratorAirChanges: inferred(
    0.4,
    0.15,
    1,
    "volumes/h",
    "about 20 door openings a day, each changing about half the air, and no other leak",
  ),
  coilTemperature: inferred(
    -8,
    -20,
    -3,
    "°C",
    "surface of a frost-free coil averaged over its cycle; no measurement found",
  ),
  coilAirChanges: inferred(
    2,
    0.5,
    8,
    "volumes/h",
    "chosen so that an empty refrigerator at 4 °C in a room of 20 °C and 50 % settles near 50 % relative humidity, as is commonly told; no measurement found",
  ),
  drawerOpenAirChanges: inferred(
    8,
    2,
    20,
    "volumes/h",
    "leak of the closed drawer and a vent of 10 cm² with air moving at 3 cm/s: about 120 L/h for 14 L; no measurement found",
  ),
  drawerHalfAirChanges: inferred(4, 1, 10, "volumes/h", "between open and closed"),
  drawerClosedAirChanges: inferred(
    1.5,
    0.3,
    5,
    "volumes/h",
    "gap of 1 mm along a front of 0.6 m with air creeping at 1 cm/s: about 21 L/h for 14 L; no measurement found",
  ),
  cupboardAirChanges: inferred(
    3,
    0.5,
    10,
    "volumes/h",
    "gaps of 1 mm along 2 m of doors with air creeping at 5 cm/s: about 360 L/h for a cupboard of 100 L; no measurement found",
  ),
  roomTemperature: practice(20, 17, 24, "°C", "heated room"),
  roomHumidity: practice(50, 30, 65, "%", "heated room"),
  roomSpread: practice(2, 1, 4, "K", "day and night, and weather"),
  roomEthylene: {
    value: 0.02,
    low: 0.005,
    high: 0.035,
    unit: "µL/L",
    source: "wills-2000",
    place: "abstract: supermarket areas 0.017–0.035 µL/L, taken for a kitchen",
    kind: "inferred",
    fromMemory: false,
  },
  cupboardCooler: practice(3, 0, 6, "K", "cupboard on an outside wall, away from the stove"),
  cellarTemperature: practice(11, 8, 14, "°C", "unheated cellar"),
  smallRefrigeratorLitres: practice(
    90,
    60,
    130,
    "L",
    "air volume of a refrigerator that reaches to the hip, partly filled; as in the small ordinary kitchen",
  ),
  largeRefrigeratorLitres: practice(
    320,
    250,
    450,
    "L",
    "air volume of a refrigerator taller than a person, partly filled",
  ),
  /** Taken where milk or lettuce freezes at the back of the refrigerator. */
  coldWhereThingsFreeze: {
    ...inferred(
      1.7,
      -0.6,
      4,
      "°C",
      "range within one refrigerator at least 4.5 K (James & Evans 1992): its coldest corner half of that below its mean, and milk freezes at about -0.5 °C",
    ),
    fromMemory: true,
  },
  /** Taken where milk turns before its date, or butter is soft enough to spread. */
  coldWhereMilkTurns: inferred(
    7.4,
    4.4,
    10.4,
    "°C",
    "midway between the mean and the warmest mean of the 112 households of Evans et al. 2014; that milk turning early means a warm refrigerator is common practice, no source",
  ),
  coolRoomTemperature: practice(17, 12, 19, "°C", "a kitchen that is hardly heated"),
  hotRoomTemperature: practice(27, 24, 32, "°C", "a kitchen in summer that nothing cools"),
  dryRoomHumidity: practice(30, 20, 40, "%", "a heated room in a cold winter, or a dry climate"),
  dampRoomHumidity: practice(
    65,
    55,
    80,
    "%",
    "windows that mist over, washing dried indoors, or a wet climate",
  ),
  balconyLitres: practice(40, 20, 80, "L", "one lidded crate on a balcony"),
  /** Widest spread of `roomSpread`: outdoors there is nothing between the produce and the weather. */
  balconySpread: practice(4, 2, 8, "K", "day and night, and weather, in a lidded crate outdoors"),
} satisfies Record<string, KitchenFigure>;
