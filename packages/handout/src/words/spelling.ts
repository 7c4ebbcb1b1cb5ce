/** Words of the messages that Americans spell or call otherwise (their dictionaries; from memory), whole words only. */
const american: Readonly<Record<string, string>> = {
  ageing: "aging",
  catalogue: "catalog",
  centre: "center",
  colour: "color",
  coloured: "colored",
  fibre: "fiber",
  fibres: "fibers",
  flavour: "flavor",
  grey: "gray",
  litre: "liter",
  litres: "liters",
  mould: "mold",
  moulds: "molds",
  mouldy: "moldy",
  neighbour: "neighbor",
  neighbours: "neighbors",
  spelt: "spelled",
  spoilt: "spoiled",
  tick: "check",
  ticked: "checked",
  ticks: "checks",
  tin: "can",
  tins: "cans",
  untick: "uncheck",
};

/** The words, and names of placeholders before them: those are nobody's spelling. */
const found = new RegExp(`\\{\\w+(?=[},])|\\b(?:${Object.keys(american).join("|")})\\b`, "giu");

function inAmerican(word: string): string {
  const own = american[word.toLowerCase()];
  if (own === undefined) return word;
  return /^\p{Lu}/u.test(word) ? own.charAt(0).toUpperCase() + own.slice(1) : own;
}

/** Messages are spelt the British way; to American readers they are told in their own. Any other tag's text stays as it is. */
export const ownSpelling = (tag: string, text: string): string =>
  tag === "en-US" ? text.replace(found, inAmerican) : text;
