import { useEffect, useRef } from "react";
import type { PlannerState } from "../state/plannerState.js";
import type { Screen } from "../state/route.js";
import { today } from "../state/today.js";
import { keptFileText } from "../storage/keptFileText.js";
import { useWords } from "../words/words.js";
import { saveFile } from "./settings/saveFile.js";

/** What of the page failed: all of it, a screen, or a part of a screen. */
export type MishapOf = "page" | "plan" | "why" | "takeAlong" | { readonly screen: Screen };

interface MishapProps {
  readonly of: MishapOf;
  readonly why: "not fetched" | "broken";
  readonly entered: () => PlannerState;
  readonly asked: boolean;
  readonly onAgain: () => void;
}

/** Says what could not be shown, in its place. Nothing entered is lost by it, and all of it can be saved. */
export function Mishap({ of, why, entered, asked, onAgain }: MishapProps) {
  const say = useWords();
  const again = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (asked) again.current?.focus();
  }, [asked]);
  const what =
    typeof of === "string"
      ? say(`mishap.${of}`)
      : say("mishap.screen", { screen: say(`screen.${of.screen}`) });
  return (
    <div className="wrong-box mishap">
      <p role="alert">
        <strong>{what}</strong> {say(why === "broken" ? "mishap.broken" : "mishap.notFetched")}{" "}
        {say("mishap.nothingLost")}
      </p>
      <p className="fields">
        <button type="button" ref={again} onClick={onAgain}>
          {say("mishap.again")}
        </button>
        <button
          type="button"
          onClick={() => saveFile(`keepwright-${today()}.json`, keptFileText(entered(), new Date()))}
        >
          {say("mishap.save")}
        </button>
      </p>
    </div>
  );
}
