import { ageAt } from "./ages.js";
import { type Degree, degreeAt, weakened } from "./degrees.js";
import { type StateChange, statePhrases } from "./stateWords.js";
import type { Token } from "./tokens.js";
import { wishAt } from "./wishes.js";

const known = new Map(
  statePhrases.flatMap(([change, texts]) => texts.map((text): [string, StateChange] => [text, change])),
);
const longest = Math.max(...[...known.keys()].map((text) => text.split(" ").length));

/** "A bit green": how ripe it is, by degree. Before a name it may be another thing ("a little green apple"). */
function ofDegree(
  tokens: readonly Token[],
  degree: Degree,
): { change: StateChange; next: number } | undefined {
  const state = stateAt(tokens, degree.next);
  if (state?.change.ripeness === undefined || tokens[state.next]?.kind === "word") return undefined;
  return { change: weakened(state.change, degree), next: state.next };
}

/** A word as it is looked up, and where it ends: "w/" is "with", "w/o" is "without". */
function wordAt(tokens: readonly Token[], at: number): { readonly text: string; readonly next: number } {
  const [word, slash, o] = tokens.slice(at, at + 3);
  if (word?.folded !== "w" || slash?.text !== "/") return { text: word!.folded, next: at + 1 };
  return o?.folded === "o" && !o.spaced ? { text: "without", next: at + 3 } : { text: "with", next: at + 2 };
}

/** The state that begins at a token, longest phrase first; words may be joined by hyphens. */
export function stateAt(
  tokens: readonly Token[],
  at: number,
): { change: StateChange; next: number } | undefined {
  const age = ageAt(tokens, at);
  if (age) return { change: age.age, next: age.next };
  const wish = wishAt(tokens, at);
  if (wish) return { change: { wanted: wish.wish }, next: wish.next };
  const degree = degreeAt(tokens, at);
  if (degree) return ofDegree(tokens, degree);
  let text = "";
  let found: { change: StateChange; next: number } | undefined;
  let index = at;
  for (let count = 0; count < longest && tokens[index]?.kind === "word"; count++) {
    const word = wordAt(tokens, index);
    text = text === "" ? word.text : `${text} ${word.text}`;
    index = word.next;
    const change = known.get(text);
    if (change) found = { change, next: index };
    if (tokens[index]?.text === "-" && !tokens[index]!.spaced) index++;
  }
  return found;
}
