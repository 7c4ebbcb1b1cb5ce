import { type Catalogue, kindNames, namesFor, suggestKinds } from "@keepwright/catalogue";
import { ordinaryKitchens } from "@keepwright/planner";
import { useEffect, useMemo, useRef, useState } from "react";
import { useDesk } from "../behaviour/desk.js";
import { takeLettersAhead } from "../behaviour/lettersAhead.js";
import { useBodyClass } from "../behaviour/useBodyClass.js";
import { useGuidance } from "../behaviour/useGuidance.js";
import { AskAnswer } from "../components/ask/AskAnswer.js";
import { AskField } from "../components/ask/AskField.js";
import { AskKinds } from "../components/ask/AskKinds.js";
import type { AskFor } from "../components/ask/AskStates.js";
import { AskSteps } from "../components/ask/AskSteps.js";
import { usePageKeys } from "../components/ask/usePageKeys.js";
import { useTypingAnywhere } from "../components/ask/useTypingAnywhere.js";
import { kitchenOf } from "../state/kitchenOf.js";
import type { LanguageKey } from "../state/language.js";
import { neighbours, noNeighbours } from "../state/neighbours.js";
import { firstKitchen } from "../state/plannerState.js";
import { addressOf } from "../state/route.js";
import { useWords } from "../words/words.js";

const kinds = kindNames();
const nameIn = (tag: string) => (id: string) => {
  const names = kinds.get(id);
  return names ? namesFor(names, tag).many : id;
};

/** Every kind in the order of the alphabet. */
const sorted = (tag: string, nameOf: (id: string) => string): readonly string[] => {
  const { compare } = new Intl.Collator(tag);
  return [...kinds.keys()].sort((one, other) => compare(nameOf(one), nameOf(other)));
};

/** One question, one large answer: where a kind goes, how, and for how long. */
export default function AskPage({ on }: { readonly on?: string | undefined }) {
  const say = useWords();
  const { haul, figures, worked, language, tag } = useDesk();
  const guidance = useGuidance(language);
  const nameOf = useMemo(() => nameIn(tag), [tag]);
  const all = useMemo(() => sorted(tag, nameOf), [tag, nameOf]);
  const [text, setText] = useState(takeLettersAhead);
  const [list, setList] = useState<readonly string[]>([]);
  const [asked, setAsked] = useState<AskFor>({ kitchen: "mine", form: "whole", ripeness: "unripe" });
  const [anywhere, setAnywhere] = useState(true);
  const field = useRef<HTMLInputElement>(null);
  const found = useFound(text, language, figures.catalogue);
  const known = on !== undefined && kinds.has(on) ? on : undefined;
  const { before, after } = known === undefined ? noNeighbours : neighbours(known, list, all);
  useBodyClass("asking");
  useTypingAnywhere(field, anywhere);
  usePageKeys(before, after);
  useAnswerFocus(known, field);
  useBegun(text, field);

  const pick = (id: string) => {
    setList(found.map((each) => each.id));
    setText("");
    setAsked((now) => ({ ...now, form: "whole", ripeness: "unripe" }));
    location.hash = addressOf("ask", id);
  };
  const own = haul.state.kitchen !== firstKitchen;
  const kitchen = useMemo(
    () => (own && asked.kitchen === "mine" ? kitchenOf(haul.state) : ordinaryKitchens[firstKitchen]),
    [own, asked.kitchen, haul.state],
  );
  return (
    <div className="ask">
      <AskField field={field} text={text} found={found} nameOf={nameOf} onType={setText} onPick={pick} />
      {on !== undefined && known === undefined && <p role="alert">{say("ask.unknown", { typed: on })}</p>}
      {known !== undefined && worked && figures.catalogue && guidance && (
        <AskAnswer
          id={known}
          context={worked.context}
          catalogue={figures.catalogue}
          guidance={guidance.get(known)}
          kitchen={kitchen}
          own={own}
          asked={asked}
          onAsk={setAsked}
        >
          <AskSteps before={before} after={after} nameOf={nameOf} />
        </AskAnswer>
      )}
      {known !== undefined && !(worked && guidance) && !figures.failed && (
        <p role="status">{say("page.opening")}</p>
      )}
      {known === undefined && <AskKinds kinds={all} nameOf={nameOf} />}
      <Anywhere on={anywhere} onChange={setAnywhere} />
    </div>
  );
}

interface AnywhereProps {
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
}

/** Whether a letter typed anywhere begins a question. */
function Anywhere({ on, onChange }: AnywhereProps) {
  const say = useWords();
  return (
    <label className="ask-anywhere small">
      <input type="checkbox" checked={on} onChange={(event) => onChange(event.target.checked)} />
      <span>{say("ask.anywhere")}</span>
    </label>
  );
}

/** The kinds that what is typed may mean; words for several kinds are known once the figures are there. */
function useFound(text: string, language: LanguageKey, catalogue: Catalogue | undefined) {
  const groups = catalogue?.groups;
  return useMemo(
    () => suggestKinds(kinds, text, { language, most: 8, ...(groups && { groups }) }),
    [text, language, groups],
  );
}

/** A question begun before the screen was there goes on in the field. */
function useBegun(text: string, field: { readonly current: HTMLInputElement | null }): void {
  const begun = useRef(text !== "");
  useEffect(() => {
    if (begun.current) field.current?.focus();
  }, [field]);
}

/** A new answer is read from its top; the focus goes to its heading, unless the person is in the field and may go on typing. */
function useAnswerFocus(
  known: string | undefined,
  field: { readonly current: HTMLInputElement | null },
): void {
  const shown = useRef(known);
  useEffect(() => {
    if (shown.current === known) return;
    shown.current = known;
    scrollTo(0, 0);
    if (document.activeElement !== field.current)
      document.getElementById("ask-title")?.focus({ preventScroll: true });
  }, [known, field]);
}
