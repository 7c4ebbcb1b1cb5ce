import { type ClassDocument, type ClassKit, classSayer } from "@keepwright/handout";
import { type DocumentPdf, documentPdf } from "@keepwright/paper";
import { unprintable } from "../output/unprintable.js";
import { UserError } from "../userError.js";

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
    const problem = unprintable(
      "class",
      error,
      "Write the title, the kitchen and its places in Latin or Cyrillic letters.",
    );
    throw problem ? new UserError([problem]) : error;
  }
}
