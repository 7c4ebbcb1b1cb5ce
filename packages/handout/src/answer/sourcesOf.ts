import type { Commodity, Evidence, Source } from "@keepwright/catalogue";
import type { AnsweredSource, FigureName } from "./itemAnswer.js";

/** The published figures an answer about a kind stands on, in the order they are named. */
function figuresOf(commodity: Commodity): [FigureName, Evidence][] {
  const { storage, respiration, ethylene, water, chilling, ripening, decay } = commodity;
  return [
    ["temperature", storage.temperature],
    ["humidity", storage.relativeHumidity],
    ["life", storage.life],
    ...respiration.map((one): [FigureName, Evidence] => ["respiration", one]),
    ...ethylene.production.map((one): [FigureName, Evidence] => ["ethylene", one]),
    ["sensitivity", ethylene.sensitivity],
    ["water", water.transpiration],
    ["water", water.maximumLoss],
    ...(chilling ? [["chilling", chilling.threshold] as [FigureName, Evidence]] : []),
    ...(ripening ? [["ripening", ripening.daysToRipe] as [FigureName, Evidence]] : []),
    ["decay", decay.proneness],
  ];
}

/** Every figure's source once: many figures of one table count as one. */
export function sourcesOf(commodity: Commodity, sources: ReadonlyMap<string, Source>): AnsweredSource[] {
  const all = figuresOf(commodity).map(([figure, { source, place, kind, fromMemory }]) => ({
    figure,
    source,
    citation: sources.get(source)?.citation ?? source,
    place,
    kind,
    fromMemory,
  }));
  const key = (one: AnsweredSource) =>
    `${one.figure}|${one.source}|${one.place}|${one.kind}|${one.fromMemory}`;
  return all.filter((one, index) => all.findIndex((other) => key(other) === key(one)) === index);
}
