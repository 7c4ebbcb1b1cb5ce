import type { Catalogue } from "@keepwright/catalogue";
import { told } from "./findingCode.js";
import { type Finding, HaulError } from "./inputError.js";
import { type Haul, haulSchema } from "./lot.js";
import { schemaFindings, shownValue } from "./schemaFindings.js";

/** A haul that can be planned for, or everything that is wrong with it. */
export type HaulCheck =
  | { readonly ok: true; readonly haul: Haul }
  | { readonly ok: false; readonly problems: readonly Finding[] };

function isEmpty(given: unknown): boolean {
  const lots = (given as { lots?: unknown } | null | undefined)?.lots;
  return Array.isArray(lots) && lots.length === 0;
}

/** Checks what may be a haul: shape, amounts, ids, and that the catalogue knows every kind. Never throws. */
export function checkHaul(given: unknown, catalogue: Catalogue): HaulCheck {
  if (isEmpty(given)) {
    const empty = {
      thing: "haul",
      value: "it is empty",
      remedy: "Add at least one kind of produce with its amount.",
      ...told("haul empty"),
    };
    return { ok: false, problems: [empty] };
  }
  const parsed = haulSchema.safeParse(given);
  if (!parsed.success) return { ok: false, problems: schemaFindings(given, "haul", parsed.error) };
  const seen = new Set<string>();
  const problems = parsed.data.lots.flatMap((lot): Finding[] => {
    const thing = `lot ${shownValue(lot.id)}`;
    const findings: Finding[] = [];
    if (seen.has(lot.id))
      findings.push({
        thing,
        value: "this id is used more than once",
        remedy: "Give each lot its own id.",
        ...told("lot id twice", { id: lot.id }),
      });
    seen.add(lot.id);
    if (!catalogue.commodities.has(lot.commodity)) {
      findings.push({
        thing,
        value: `kind ${shownValue(lot.commodity)} is not in the catalogue`,
        remedy: "Look the kind up by name first, and use its id.",
        ...told("kind not in catalogue", { id: lot.id, kind: lot.commodity }),
      });
    }
    return findings;
  });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, haul: parsed.data };
}

/** The haul, or a HaulError with all findings. */
export function haulFrom(given: unknown, catalogue: Catalogue): Haul {
  const check = checkHaul(given, catalogue);
  if (!check.ok) throw new HaulError(check.problems);
  return check.haul;
}
