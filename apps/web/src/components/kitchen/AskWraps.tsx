import { describedKitchen, type Kitchen, wrapIds } from "@keepwright/planner";
import { useKitchenWords } from "./kitchenWords.js";
import { type Option, OptionCards } from "./OptionCards.js";
import type { AskProps } from "./QuestionScreen.js";

type Wrap = (typeof wrapIds)[number];
const wraps: readonly Wrap[] = [...wrapIds.filter((wrap) => wrap !== "none"), "none"];
const usual = describedKitchen({}, "-").kitchen.wraps;

/** What is at hand to wrap things in; ticked is what most have until it is answered. */
export function AskWraps({ answers, onAnswer }: AskProps) {
  const say = useKitchenWords();
  const held = answers.wraps ?? usual;
  const choose = (wrap: Wrap, chosen: boolean) => {
    if (wrap === "none") return onAnswer({ wraps: [] });
    const next = wraps.filter((each) => (each === wrap ? chosen : held.some((other) => other === each)));
    return onAnswer({ wraps: next.filter((each) => each !== "none") as Kitchen["wraps"] });
  };
  const options = wraps.map(
    (value): Option<Wrap> => ({ value, words: say(`option.wraps.${value}`), picture: `wraps.${value}` }),
  );
  return (
    <>
      {!answers.wraps && <p className="soft">{say("wraps.usual")}</p>}
      <OptionCards
        legend={say("ask.wraps")}
        several
        options={options}
        chosen={held.length === 0 ? ["none"] : held}
        onChoose={choose}
      />
    </>
  );
}
