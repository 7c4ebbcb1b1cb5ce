import { type LabelSheet, sheetFaults, type UsualSheet, usualSheets } from "@keepwright/handout";
import { quoted, UserError, userError } from "../userError.js";

const pair = /^(\d{1,4}(?:[.,]\d{1,3})?)[x×](\d{1,4}(?:[.,]\d{1,3})?)$/i;
const remedy = `Give one of ${Object.keys(usualSheets).join(", ")}; or five pairs in mm: "210x297 3x7 63.5x38.1 7.25x15.15 2.5x0".`;

const isUsual = (text: string): text is UsualSheet => Object.hasOwn(usualSheets, text);

/** A label sheet: a usual one by its measures, or one's own in five pairs. Throws UserError for what is neither, or cannot be. */
export function gridOption(text: string): LabelSheet {
  const bare = text.trim().toLowerCase();
  if (isUsual(bare)) return usualSheets[bare];
  const numbers = bare.split(/\s+/).flatMap((word) => {
    const match = pair.exec(word);
    return match
      ? [match[1] ?? "", match[2] ?? ""].map((part) => Number(part.replace(",", ".")))
      : [Number.NaN];
  });
  if (numbers.length !== 10 || numbers.some(Number.isNaN)) throw userError("--grid", quoted(text), remedy);
  const at = (index: number): number => numbers[index] ?? 0;
  const sheet: LabelSheet = {
    pageWidth: at(0),
    pageHeight: at(1),
    columns: at(2),
    rows: at(3),
    labelWidth: at(4),
    labelHeight: at(5),
    marginLeft: at(6),
    marginTop: at(7),
    gapAcross: at(8),
    gapDown: at(9),
  };
  const faults = sheetFaults(sheet);
  if (faults.length > 0) throw new UserError(faults);
  return sheet;
}
