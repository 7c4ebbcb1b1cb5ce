import type { Catalogue, RawCatalogue } from "./catalogue.js";
import type { CommodityFile } from "./fileSchema.js";
import type { NameGroup } from "./groups.js";
import { withInferred } from "./infer/withInferred.js";
import { kindNames } from "./kindNames.js";
import type { OdourPair, SafetyLimit, Source, Wrap } from "./tables.js";

/** Fills in what the schema lets a record leave out. */
const completed = (commodity: CommodityFile): CommodityFile => ({
  ...commodity,
  names: {
    en: { ...commodity.names.en, also: commodity.names.en.also ?? [] },
    es: { ...commodity.names.es, also: commodity.names.es.also ?? [] },
  },
  ethylene: { ...commodity.ethylene, injuries: commodity.ethylene.injuries ?? [] },
  sprouting: commodity.sprouting ?? [],
  eatingEffects: commodity.eatingEffects ?? [],
  preparation: commodity.preparation ?? [],
});

const byId = <Item extends { id: string }>(items: readonly Item[]) =>
  new Map(items.map((item) => [item.id as Item["id"], item]));

/** Wraps by their ids. */
export const wrapsById = (wraps: unknown): Catalogue["wraps"] => byId(wraps as Wrap[]);

/** Figures of kinds, which are kept without their names, with the names of the same kinds in the same order put first again. */
export const withNames = (commodities: unknown): unknown =>
  [...kindNames().values()].map((named, index) => ({
    ...named,
    ...(commodities as Record<string, unknown>[])[index],
  }));

/** A catalogue from raw data that is trusted, not checked again, so that opening it costs little. */
export const assembled = (data: RawCatalogue): Catalogue => ({
  commodities: byId(withInferred((data.commodities as CommodityFile[]).map(completed))),
  sources: byId(data.sources as Source[]),
  groups: data.groups as NameGroup[],
  wraps: wrapsById(data.wraps),
  odours: data.odours as OdourPair[],
  safety: byId(data.safety as SafetyLimit[]),
});

/** The catalogue of the part of the bundle that has the figures, which keeps kinds without their names. */
export const assembledFigures = (figures: RawCatalogue): Catalogue =>
  assembled({ ...figures, commodities: withNames(figures.commodities) });
