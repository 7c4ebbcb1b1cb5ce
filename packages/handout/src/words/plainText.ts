// Control characters, and marks that turn the direction of text or break lines unseen.
const unseen = /\p{Cc}|[\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/gu;

/**
 * Text from outside made safe to show on a terminal or a page: mark-up stays as the characters it is, and control
 * characters are written as a visible replacement, so that a name can neither move the cursor nor hide words.
 */
export const plainText = (text: string): string => text.replace(/[\t\n\r]+/g, " ").replace(unseen, "\ufffd");

/** The same, cut after `most` characters with an ellipsis. */
export function shortText(text: string, most = 80): string {
  const characters = [...plainText(text)];
  return characters.length <= most ? characters.join("") : `${characters.slice(0, most - 1).join("")}…`;
}
