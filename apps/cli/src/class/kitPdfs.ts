import type { ClassDocument, ClassKit } from "@keepwright/handout";
import { type DocumentPdf, documentPdf, kitOptions } from "@keepwright/paper";
import { unprintable } from "../output/unprintable.js";
import { UserError } from "../userError.js";

/** The name of a document's file. */
export const fileOf = ({ id }: Pick<ClassDocument, "id">): string => `${id}.pdf`;

/** A document as PDF. Throws UserError where a name has a character that cannot be printed. */
export function printedDocument(kit: ClassKit, document: ClassDocument): DocumentPdf {
  const { title, language } = kit;
  try {
    return documentPdf(document, kitOptions({ audience: kit.request.audience, title, language }));
  } catch (error) {
    const problem = unprintable(
      "class",
      error,
      "Write the title, the kitchen and its places in Latin or Cyrillic letters.",
    );
    throw problem ? new UserError([problem]) : error;
  }
}
