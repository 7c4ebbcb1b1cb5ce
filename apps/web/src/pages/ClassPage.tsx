import "../styles/class.css";
import { type ClassRequest, classTopics, kindName, type PrintSize } from "@keepwright/handout";
import { useEffect, useRef, useState } from "react";
import { type Desk, useDesk } from "../behaviour/desk.js";
import { usePaper } from "../behaviour/paper/usePaper.js";
import { useClass } from "../behaviour/useClass.js";
import { PageView } from "../components/class/PageView.js";
import { PaperStatus } from "../components/paper/PaperStatus.js";
import { kitchenOf } from "../state/kitchenOf.js";
import { lotsToPlan } from "../state/readLots.js";
import { useWords } from "../words/words.js";

/** Length of a class where nobody says it [min]; the command line's own. Declared, no source. */
const minutes = 60;

/** The kinds that stand on the page, a name a line. */
function kindsAtHome({ worked }: Desk): string {
  if (!worked) return "";
  const kinds = new Set(lotsToPlan(worked.lines).map(({ commodity }) => commodity));
  return [...kinds].map((id) => kindName(worked.context, id)).join("\n");
}

function requestFor({ haul, language }: Desk, kinds: string, print: PrintSize): ClassRequest {
  const { state } = haul;
  const units = typeof state.units === "string" ? state.units : state.units.mass;
  const items = kinds
    .split(/[\n,;]/u)
    .map((name) => name.trim())
    .filter((name) => name !== "");
  return {
    version: 1,
    audience: { language, print, paper: units === "us" ? "letter" : "a4", units },
    items,
    household: {
      kitchen: kitchenOf(state),
      people: state.people,
      portions: state.portions,
      days: state.days,
    },
    minutes,
    topics: classTopics,
    seed: 1,
  };
}

/** Pages for a class: choose kinds, look at the pages, print them. */
export default function ClassPage() {
  const say = useWords();
  const desk = useDesk();
  const [typed, setTyped] = useState<string>();
  const [large, setLarge] = useState(false);
  const { answer, working, make } = useClass();
  const kinds = typed ?? kindsAtHome(desk);
  const print: PrintSize = large ? "large" : "ordinary";
  const wrong = answer?.kind === "wrong" && !working;
  return (
    <section className={large ? "class class-large" : "class"} aria-labelledby="class-heading">
      <h2 id="class-heading">{say("class.title")}</h2>
      <form
        className="class-form"
        onSubmit={(event) => {
          event.preventDefault();
          make(requestFor(desk, kinds, print));
        }}
      >
        <p>{say("class.lead")}</p>
        <label htmlFor="class-kinds">{say("class.kinds")}</label>
        <textarea
          id="class-kinds"
          rows={8}
          value={kinds}
          aria-invalid={wrong}
          aria-describedby={wrong ? "class-wrong" : undefined}
          onChange={({ target }) => setTyped(target.value)}
        />
        <label className="class-tick">
          <input type="checkbox" checked={large} onChange={({ target }) => setLarge(target.checked)} />
          <span>{say("class.large")}</span>
        </label>
        <button type="submit" className="main-button">
          {say("class.make")}
        </button>
      </form>
      <p role="status" className="class-status">
        {working
          ? say("class.working")
          : answer?.kind === "pages" && say("class.made", { count: answer.pages.length })}
      </p>
      {wrong && (
        <p role="alert" id="class-wrong" className="wrong wrong-box">
          {say("class.wrong", { problem: answer.message || say("class.stopped") })}
        </p>
      )}
      {answer?.kind === "pages" && <Pages {...answer} />}
    </section>
  );
}

type PagesProps = Extract<NonNullable<ReturnType<typeof useClass>["answer"]>, { kind: "pages" }>;

function Pages({ pages, title: kitTitle, language, audience }: PagesProps) {
  const say = useWords();
  /** The page to be printed alone; empty: all of them. */
  const [only, setOnly] = useState<string>();
  const printed = useRef(false);
  const { state, make } = usePaper();
  const [saved, setSaved] = useState<string>();
  const save = (document: PagesProps["pages"][number]) => {
    setSaved(document.id);
    make({ sort: "document", document, kit: { audience, title: kitTitle, language } }, `${document.id}.pdf`);
  };
  useEffect(() => {
    if (only === undefined || printed.current) return;
    printed.current = true;
    window.print();
    printed.current = false;
    setOnly(undefined);
  }, [only]);
  return (
    <div lang={language}>
      <p className="class-controls">
        <button type="button" onClick={() => setOnly("")}>
          {say("class.printAll")}
        </button>
      </p>
      <ul className="class-list class-controls">
        {pages.map(({ id, title }) => (
          <li key={id}>
            <button type="button" onClick={() => document.getElementById(`class-${id}`)?.scrollIntoView()}>
              {title}
            </button>
          </li>
        ))}
      </ul>
      {pages.map((page) => (
        <PageView
          key={page.id}
          page={page}
          kept={only !== undefined && only !== "" && only !== page.id}
          onPrint={() => setOnly(page.id)}
          onSave={() => save(page)}
        >
          {saved === page.id && <PaperStatus state={state} />}
        </PageView>
      ))}
    </div>
  );
}
