import { type ClassDocument, type ClassKit, classSayer } from "@keepwright/handout";
import { type DocumentPdf, documentPdf, PaperError } from "@keepwright/paper";
import { quoted, userError } from "../userError.js";

/** The name of a document's file. */
export const fileOf = ({ id }: Pick<ClassDocument, "id">): string => `${id}.pdf`;

/** A document as PDF. Throws UserError where a name has a character that cannot be printed. */
export function printedDocument(kit: ClassKit, document: ClassDocument): DocumentPdf {
  const { language, paper, print } = kit.request.audience;
  const say = classSayer(language, kit.language);
  try {
    return documentPdf(document, {
      paper,
      print,
      language: kit.language,
      sourcesHeading: say("kit.sources"),
      kit: say("kit.foot", { title: kit.title }),
      pageWords: (page, pages) => say("kit.page", { page, pages }),
    });
  } catch (error) {
    if (!(error instanceof PaperError) || error.characters.length === 0) throw error;
    throw userError(
      "class",
      `there are no letters to print ${error.characters.map(quoted).join(", ")}`,
      "Write the title, the kitchen and its places in Latin or Cyrillic letters.",
    );
  }
}
