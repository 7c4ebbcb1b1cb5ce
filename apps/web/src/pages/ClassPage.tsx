import "../styles/class.css";
import { kindName } from "@keepwright/handout";
import { useCallback, useEffect, useRef, useState } from "react";
import { type Desk, useDesk } from "../behaviour/desk.js";
import { usePaper } from "../behaviour/paper/usePaper.js";
import { useClass } from "../behaviour/useClass.js";
import { ClassFormView } from "../components/class/ClassFormView.js";
import { PageView } from "../components/class/PageView.js";
import { PaperStatus } from "../components/paper/PaperStatus.js";
import { type ClassForm, classRequest, usualClass } from "../state/classForm.js";
import { lotsToPlan } from "../state/readLots.js";
import { today } from "../state/today.js";
import { useWords } from "../words/words.js";

/** The kinds that stand on the page, a name a line. */
function kindsAtHome({ worked }: Desk): string {
  if (!worked) return "";
  const kinds = new Set(lotsToPlan(worked.lines).map(({ commodity }) => commodity));
  return [...kinds].map((id) => kindName(worked.context, id)).join("\n");
}

/**
 * Only what was changed: the kinds at home follow the list until somebody names others. It is kept when a field is left, or the screen, so that
 * letters are undone together.
 */
function useChanged(haul: Desk["haul"]) {
  const [typed, setTyped] = useState<Partial<ClassForm>>({});
  const unkept = useRef({ typed, haul });
  unkept.current = { typed, haul };
  const keep = useCallback(() => {
    const { typed: form, haul: own } = unkept.current;
    if (Object.keys(form).length === 0) return;
    own.change({ change: "class", form });
    unkept.current = { typed: {}, haul: own };
    setTyped({});
  }, []);
  useEffect(() => {
    document.addEventListener("focusout", keep);
    addEventListener("pagehide", keep);
    return () => {
      document.removeEventListener("focusout", keep);
      removeEventListener("pagehide", keep);
      keep();
    };
  }, [keep]);
  const change = (form: Partial<ClassForm>) => setTyped((before) => ({ ...before, ...form }));
  return [{ ...haul.state.classForm, ...typed }, change] as const;
}

/** Pages for a class: say what it is about, look at the pages, print them. */
export default function ClassPage() {
  const say = useWords();
  const desk = useDesk();
  const [changed, change] = useChanged(desk.haul);
  const { answer, working, make } = useClass();
  const form = { ...usualClass(kindsAtHome(desk), today(), desk.tag), ...changed };
  const wrong = answer?.kind === "wrong" && !working;
  const { haul } = desk;
  return (
    <section className={form.large ? "class class-large" : "class"} aria-labelledby="class-heading">
      <h2 id="class-heading">{say("class.title")}</h2>
      <ClassFormView
        form={form}
        onChange={change}
        onMake={() => make(classRequest(haul.state, desk, form))}
        tag={desk.tag}
        wrongBy={wrong ? "class-wrong" : undefined}
      />
      <p role="status" className="class-status">
        {working ? say("class.working") : answer?.kind === "pages" && <Made {...answer} />}
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

/** How many pages were made; which kinds a season has chosen; and what was taken for what. */
function Made({ pages, chosen, taken }: PagesProps) {
  const say = useWords();
  const { tag } = useDesk();
  const count = say("class.made", { count: pages.length });
  if (chosen.length === 0) return [count, ...taken].join(" ");
  const names = new Intl.ListFormat(tag).format(chosen);
  return `${count} ${say("class.chosen", { names })}`;
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
      <div className="class-pages">
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
    </div>
  );
}
