import { element } from "./html.mjs";

const longestShort = 60;
const cutAtWord = (text) =>
  text.length <= longestShort ? text : `${text.slice(0, longestShort).replace(/[\s,;:.&]+\S*$/, "")} …`;

/** A citation as short as it can be found again by: up to its year, or else its first sentence or words. */
export function shortCitation(citation) {
  const upToYear = /^.{3,80}?\b(?:18|19|20)\d\d[a-z]?\b/.exec(citation)?.[0];
  const firstSentence = /^.{8,80}?\p{L}{3}(?=\. )/u.exec(citation)?.[0];
  return upToYear ?? firstSentence ?? cutAtWord(citation);
}

/** Numbers the sources of one page in the order in which they are first named. */
export function sourceNumbers(sources) {
  const numbers = new Map();
  const sourceOf = (id) => sources.get(id) ?? { id, citation: id, standing: "unknown" };
  const numberOf = (id) => {
    if (!numbers.has(id)) numbers.set(id, numbers.size + 1);
    return numbers.get(id);
  };
  return {
    sourceOf,
    /** The short citation, or other words for it, linked to the full one at the end of the page. */
    link: (id, words = shortCitation(sourceOf(id).citation)) => {
      const number = numberOf(id);
      return element("a", { href: `#source-${number}` }, `${words} [${number}]`);
    },
    /** Every source named so far, in full. */
    list: () =>
      element(
        "ol",
        { class: "sources" },
        [...numbers].map(([id, number]) => {
          const { citation, standing, note } = sourceOf(id);
          return element("li", { id: `source-${number}` }, citation, ` (${standing})`, note && ` ${note}`);
        }),
      ),
  };
}
