import { shownValue } from "../problem/schemaFindings.js";
import { ageAt } from "../reading/ages.js";
import { tokensOf } from "../reading/tokens.js";
import { limited, understood } from "./accountKinds.js";
import type { HappenedContext } from "./accountRead.js";
import { Unreadable } from "./unreadable.js";

/** Whether some day is told in what was typed, today's too. */
function tellsDay(typed: string): boolean {
  const tokens = tokensOf(typed, 0);
  return tokens.some((_, at) => ageAt(tokens, at, true) !== undefined);
}

/** What came home, as lots. What is cut, or has a safe time as it is sold and may be left of what was here before, must tell its day: taken as new, an old one would begin a new safe time. A word for several kinds stands for what it mostly means by the catalogue, with which it may mean besides. */
export function cameHome(context: HappenedContext, phrase: string, how: "came home" | "found"): object[] {
  const { catalogue, lots } = context;
  return understood(context, phrase, "what came home").map(({ lot, typed, questions }) => {
    const known = how === "found" || lots.some(({ commodity }) => commodity === lot.commodity);
    const aged = lot.form === "cut" || (known && limited(catalogue, lot.commodity).asSold);
    if (aged && !tellsDay(typed))
      throw new Unreadable(
        "account without age",
        `it is not told how old ${shownValue(typed)} is, and its safe time runs`,
        "Say it, as in: bought 200 g melon, cut today; or: cut 2 days ago. What is left of what was here before is as old as that.",
        { phrase: shownValue(typed) },
      );
    const which = questions.find(({ ask }) => ask === "which commodity");
    return {
      ...lot,
      typed,
      ...(which?.ask === "which commodity" && { meant: { word: which.word, kinds: which.candidates } }),
    };
  });
}
