import type { Catalogue } from "../catalogue.js";
import type { Source } from "../tables.js";

interface Standing {
  readonly source: string;
  readonly kind: string;
  readonly fromMemory: boolean;
}

interface WithRivals extends Standing {
  readonly rivals: readonly Standing[];
  readonly chosen?: string;
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null;
const hasRivals = (value: Record<string, unknown>): boolean =>
  Array.isArray(value.rivals) && typeof value.source === "string";

/** Every figure of a record that has rivals, with its path. */
function contested(value: unknown, path = ""): [string, WithRivals][] {
  if (!isObject(value)) return [];
  const own: [string, WithRivals][] = hasRivals(value) ? [[path, value as unknown as WithRivals]] : [];
  const below = Object.entries(value)
    .filter(([key]) => key !== "rivals")
    .flatMap(([key, each]) => contested(each, path ? `${path}.${key}` : key));
  return [...own, ...below];
}

/**
 * Where a figure stands among its rivals: published before inferred before told in the trade; then read before remembered;
 * then handbook, paper or authority before a secondary page. Less is better.
 */
function rank({ source, kind, fromMemory }: Standing, sources: ReadonlyMap<string, Source>): number {
  const published = kind === "measured" || kind === "recommended";
  const told = published ? 0 : kind === "inferred" ? 1 : 2;
  const secondary = sources.get(source)?.standing === "secondary page";
  return 4 * told + 2 * (fromMemory ? 1 : 0) + (secondary ? 1 : 0);
}

/**
 * Defaults before which a rival stands by the rule, without a word why they were chosen all the same (another form or
 * cultivar, conditions nearer to a household's, a coefficient where the rival is only a class).
 */
export const checkDefaults = ({ commodities, sources }: Catalogue): string[] =>
  [...commodities].flatMap(([id, commodity]) =>
    contested(commodity).flatMap(([path, figure]) => {
      const better = figure.rivals.find((rival) => rank(rival, sources) < rank(figure, sources));
      return better && figure.chosen === undefined
        ? [
            `${id}: ${path} takes "${figure.source}" though its rival "${better.source}" stands before it; make that the default, or say why not in "chosen".`,
          ]
        : [];
    }),
  );
