import type { StepName } from "../../state/history/stepName.js";
import { namedSteps } from "../../state/history/stepName.js";
import { useWords } from "../../words/words.js";

type NamedStep = (typeof namedSteps)[number];
const isNamed = (what: StepName["what"]): what is NamedStep => namedSteps.some((each) => each === what);

/** Says what a step did. */
export function useStepWords(): (step: StepName | "forgotten") => string {
  const say = useWords();
  return (step) => {
    if (step === "forgotten") return say("step.forgotten");
    const { what, words, more = 0 } = step;
    if (!isNamed(what)) return say(`step.${what}`);
    return words === "" ? say("step.other") : say(`step.${what}`, { words, lines: more + 1 });
  };
}
