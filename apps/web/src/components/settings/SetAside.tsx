import { useEffect, useRef, useState } from "react";
import { useDesk } from "../../behaviour/desk.js";
import type { KeptAside } from "../../storage/shelf.js";
import { useSettingsWords } from "../../words/settingsWords.js";
import { saveFile } from "./saveFile.js";
import { UnusedList } from "./UnusedList.js";

/** Records that could not be used in full: each as it was, to save as a file, with what was wrong with it. */
export function SetAside({ wanted }: { readonly wanted: boolean }) {
  const say = useSettingsWords();
  const { keeper, asides: count } = useDesk().haul;
  const [asides, setAsides] = useState<readonly KeptAside[]>([]);
  const heading = useRef<HTMLHeadingElement>(null);
  // The count says that they have to be read again.
  useEffect(() => {
    let current = true;
    keeper.asides().then(
      (read) => current && setAsides(read),
      () => undefined,
    );
    return () => {
      current = false;
    };
  }, [keeper, count]);
  const shown = asides.length > 0;
  useEffect(() => {
    if (wanted && shown) heading.current?.focus();
  }, [wanted, shown]);
  if (!shown) return null;
  return (
    <section aria-labelledby="asides-heading">
      <h3 id="asides-heading" ref={heading} tabIndex={-1}>
        {say("asides.heading")}
      </h3>
      <p>{say("asides.about")}</p>
      <ul className="asides">
        {asides.map((aside) => (
          <li key={aside.number}>
            <AsideEntry aside={aside} onDrop={() => void keeper.dropAside(aside)} />
          </li>
        ))}
      </ul>
    </section>
  );
}

interface AsideEntryProps {
  readonly aside: KeptAside;
  readonly onDrop: () => void;
}

function AsideEntry({ aside, onDrop }: AsideEntryProps) {
  const say = useSettingsWords();
  const { tag } = useDesk();
  const question = useRef<HTMLDialogElement>(null);
  const date = new Intl.DateTimeFormat(tag, { dateStyle: "long", timeStyle: "short" }).format(aside.at);
  const id = `aside-${aside.number}`;
  return (
    <>
      <p className="aside-name">{say("asides.from", { date })}</p>
      {aside.unused.length === 0 && <p>{say("asides.step")}</p>}
      <UnusedList unused={aside.unused} />
      <p className="fields">
        <button
          type="button"
          aria-label={say("asides.saveNamed", { date })}
          onClick={() => saveFile(`keepwright-set-aside-${aside.number}.json`, aside.content)}
        >
          {say("asides.save")}
        </button>
        <button
          type="button"
          aria-label={say("asides.dropNamed", { date })}
          onClick={() => question.current?.showModal()}
        >
          {say("asides.drop")}
        </button>
      </p>
      <dialog ref={question} aria-labelledby={id}>
        <form method="dialog">
          <h2 id={id}>{say("asides.question")}</h2>
          <p>{say("asides.detail")}</p>
          <p className="dialog-buttons">
            <button type="submit">{say("asides.no")}</button>
            <button type="submit" className="main-button" onClick={onDrop}>
              {say("asides.drop")}
            </button>
          </p>
        </form>
      </dialog>
    </>
  );
}
