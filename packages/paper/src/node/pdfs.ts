import type { ClassDocument, LabelRow, SheetView } from "@keepwright/handout";
import { type DocumentOptions, type DocumentPdf, setDocument } from "../setting/setDocument.js";
import { type LabelsOptions, type LabelsPdf, setLabels } from "../setting/setLabels.js";
import { type SheetOptions, type SheetPdf, setSheet } from "../setting/setSheet.js";
import { nodeTypesetter } from "./nodeTypesetter.js";

/** `setSheet` by Node's typesetter. */
export const sheetPdf = (view: SheetView, options: SheetOptions): SheetPdf =>
  setSheet(nodeTypesetter(), view, options);

/** `setDocument` by Node's typesetter. */
export const documentPdf = (document: ClassDocument, options: DocumentOptions): DocumentPdf =>
  setDocument(nodeTypesetter(), document, options);

/** `setLabels` by Node's typesetter. */
export const labelsPdf = (rows: readonly LabelRow[], options: LabelsOptions): LabelsPdf =>
  setLabels(nodeTypesetter(), rows, options);
