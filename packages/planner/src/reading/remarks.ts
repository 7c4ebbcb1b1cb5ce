import type { Element } from "./elements.js";
import type { Token } from "./tokens.js";

/** What it is bought for: it says nothing of what came home. */
const purposes = new Set(
  (
    "soup soups juice juicing salad salads stew sauce salsa guacamole smoothies cooking baking snacking " +
    "sopa sopas caldo jugo jugos zumo ensalada ensaladas guisar guiso licuados agua cocinar hornear"
  ).split(" "),
);
const articles = new Set("a the el la los las un una".split(" "));
const aboutWords = [
  ["mas", "o", "menos"],
  ["more", "or", "less"],
];

/** Where a purpose ends that begins at a token: "for juicing", “para la sopa”. */
function afterPurpose(tokens: readonly Token[], at: number): number | undefined {
  if (!["for", "para"].includes(tokens[at]!.folded)) return undefined;
  const word = articles.has(tokens[at + 1]?.folded ?? "") ? at + 2 : at + 1;
  return purposes.has(tokens[word]?.folded ?? "") ? word + 1 : undefined;
}

/** Words together that change nothing, or only say that an amount is about right; "w/" where no state follows. */
export function remarkAt(tokens: readonly Token[], at: number): Element | undefined {
  const purpose = afterPurpose(tokens, at);
  if (purpose !== undefined) return { type: "descriptor", roughly: false, first: at, next: purpose };
  const about = aboutWords.find((words) => words.every((word, index) => tokens[at + index]?.folded === word));
  if (about) return { type: "descriptor", roughly: true, first: at, next: at + about.length };
  const slash = tokens[at]!.folded === "w" && tokens[at + 1]?.text === "/" && tokens[at + 2]?.folded !== "o";
  return slash ? { type: "connective", first: at, next: at + 2 } : undefined;
}
