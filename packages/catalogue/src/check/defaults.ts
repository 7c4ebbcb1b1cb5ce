import type { Catalogue } from "../catalogue.js";
import type { Source } from "../tables.js";
import { sourceNamers } from "./evidence.js";

interface Standing {
  readonly source: string;
  readonly kind: string;
  readonly fromMemory: boolean;
}

interface WithRivals extends Standing {
  readonly rivals: readonly Standing[];
  readonly chosen?: string;
}

/** Every figure of a record that has rivals, with its path; a rival has none of its own. */
const contested = (record: unknown): [string, WithRivals][] =>
  sourceNamers(record).flatMap(([path, part]): [string, WithRivals][] =>
    Array.isArray(part.rivals) ? [[path, part as unknown as WithRivals]] : [],
  );

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
