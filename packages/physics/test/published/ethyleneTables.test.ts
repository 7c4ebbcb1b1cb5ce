import { catalogue, commodityOf } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import {
  ethyleneActionFactor,
  ethyleneProduction,
  produceAtTemperature,
  produceFromCommodity,
  woundEthyleneFactor,
  wrapAir,
} from "../../src/index.js";
import { whole } from "../fixtures/kinds.js";
import { expectAgreement } from "./expectAgreement.js";
import { readTable } from "./readTable.js";
import { publishedRange, record } from "./record.js";
import { useOf } from "./useOf.js";

const produceOf = (kind: string) => produceFromCommodity(commodityOf(catalogue(), kind));

/** How the model came by a rate: carried on from one temperature, between rows of the catalogue's table, or only handed on from it. */
function remarkOn(
  { temperatures }: { temperatures: readonly number[] },
  celsius: number,
  alone: boolean,
): string {
  if (alone) return "";
  return temperatures.includes(celsius)
    ? "the catalogue's own figure, from elsewhere"
    : "worked out between rows of the catalogue";
}

describe("ethylene production at other temperatures", () => {
  test.each(readTable("ethyleneProduction"))("$ripeness $kind at $celsius °C from $fromCelsius", (row) => {
    const produce = produceOf(row.kind!);
    const alone = row.fromCelsius !== "";
    const given = alone
      ? {
          temperatures: [Number(row.fromCelsius)],
          values: [Math.sqrt(Number(row.fromLow) * Number(row.fromHigh))],
        }
      : produce[row.ripeness === "ripe" ? "ethyleneRipe" : "ethyleneUnripe"];
    const model = ethyleneProduction(given, Number(row.celsius));
    const [recorded] = record("ethylene-production-tables", [
      {
        room: "ethylene production",
        what: `${row.ripeness} ${row.kind} at ${row.celsius} °C${alone ? ` from its rate at ${row.fromCelsius} °C` : ""}`,
        model,
        ...publishedRange(row.low, row.high),
        unit: "µL/(kg h)",
        source: row.source!,
        fromMemory: row.fromMemory === "yes",
        use: useOf(row, []),
        tolerance: Number(row.tolerance),
        note: [remarkOn(given, Number(row.celsius), alone), row.misfit ? `known misfit: ${row.why}` : ""]
          .filter(Boolean)
          .join("; "),
      },
    ]);
    expectAgreement(recorded, row.misfit);
  });
});

describe("response to ethylene of single kinds", () => {
  test.each(readTable("ethyleneResponse"))(
    "$kind, $measure in $more relative to $less at $celsius °C",
    (row) => {
      const produce = produceOf(row.kind!);
      const slope = row.measure === "ripening" ? produce.ripening!.ethyleneSlope : produce.ethyleneSlope;
      const factor = (concentration: string) => ethyleneActionFactor(slope, Number(concentration));
      const model = factor(row.more!) / factor(row.less!);
      const [recorded] = record("ethylene-response", [
        {
          room: "ethylene action",
          what: `${row.kind}: ${row.measure === "ripening" ? "days to ripen" : "life"} in ${row.more} relative to ${row.less} µL/L at ${row.celsius} °C`,
          model,
          ...publishedRange(row.low, row.high),
          unit: "1",
          source: row.source!,
          fromMemory: row.fromMemory === "yes",
          use: useOf(row, []),
          tolerance: Number(row.tolerance),
          note: row.misfit ? `known misfit: ${row.why}` : "",
        },
      ]);
      expectAgreement(recorded, row.misfit);
    },
  );
});

test("broccoli florets sealed in film at 4 °C: 61.8 µL/L after 20 days was measured, the model stays far below: a known misfit", () => {
  const lot = produceAtTemperature(produceOf("broccoli"), { ...whole, cut: true }, 4);
  const film = wrapAir(catalogue().wraps.get("closed film bag")!, 1);
  const uncut = Math.exp(produceAtTemperature(produceOf("broccoli"), whole, 4).logEthyleneRipe);
  const [recorded] = record("ethylene-in-bag", [
    {
      room: "ethylene in places",
      what: "broccoli florets, 1 kg taken, in a closed film bag at 4 °C",
      model: Math.exp(lot.logEthyleneRipe) / film.litresPerHour,
      published: 61.8,
      unit: "µL/L",
      source:
        "Active packaging film with ethylene adsorber, broccoli florets in LDPE (abstract): 61.8 ppm in 20 d at 4 °C",
      fromMemory: false,
      use: "check",
      tolerance: 1.5,
      note: "known misfit: the bag was sealed (the wrap's mouth is folded), its oxygen fell below 1 %, and cut and spoiling florets give off far more than whole heads",
    },
  ]);
  expect(Math.exp(lot.logEthyleneRipe) / uncut).toBeCloseTo(woundEthyleneFactor, 6);
  expectAgreement(recorded, "0.0005-0.05");
});
