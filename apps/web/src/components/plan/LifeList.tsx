import type { LifeView } from "@keepwright/handout";
import { memo } from "react";
import { useNarrow } from "../../behaviour/useNarrow.js";
import { mostOpen, mostOpenNarrow } from "../../state/manyThings.js";
import { whyAddress } from "../../state/route.js";
import { useWords } from "../../words/words.js";

interface LifeListProps {
  readonly heading: string;
  readonly lives: readonly LifeView[];
}

/** How long each lot lasts, shortest first, with the reason that tells most; all the rest is one touch away. */
export const LifeList = memo(function LifeList({ heading, lives }: LifeListProps) {
  const narrow = useNarrow();
  const first = narrow ? lives.slice(0, mostOpenNarrow.lives) : lives;
  return (
    <section className="words life-section">
      <h3>{heading}</h3>
      <Lives lives={first} closed={lives.length > mostOpen && !narrow} />
      {first.length < lives.length && <Folded lives={lives.slice(first.length)} />}
    </section>
  );
});

function Lives({ lives, closed }: Pick<LifeListProps, "lives"> & { readonly closed: boolean }) {
  return (
    <ul className="lives">
      {lives.map((life) => (
        <Life key={life.lot} life={life} closed={closed} />
      ))}
    </ul>
  );
}

/** What lasts longer, in a narrow window: a line for each, what has a last safe day with it, and all the rest one touch away. */
function Folded({ lives }: Pick<LifeListProps, "lives">) {
  const say = useWords();
  return (
    <>
      <ul className="short-lives">
        {lives.map((life) => (
          <li key={life.lot}>
            <strong>{life.name}</strong> {say("life.short", { span: life.span, ending: life.endedBy })}
            {life.limited && <span className="below">{life.lookByLine}</span>}
          </li>
        ))}
      </ul>
      <details className="fold">
        <summary>{say("life.fold")}</summary>
        <Lives lives={lives} closed />
      </details>
    </>
  );
}

function Life({ life, closed }: { readonly life: LifeView; readonly closed: boolean }) {
  const line = <LifeLine life={life} />;
  if (closed && !life.limited)
    return (
      <li className="folded">
        <details>
          <summary className="life-line">{line}</summary>
          <LifeRest life={life} />
        </details>
      </li>
    );
  return (
    <li className={life.limited ? "limited" : undefined}>
      <p className="life-line">{line}</p>
      <LifeRest life={life} />
    </li>
  );
}

function LifeLine({ life }: { readonly life: LifeView }) {
  const say = useWords();
  return (
    <>
      <strong>{life.name}</strong> <span>{say("life.span", { span: life.span, ending: life.endedBy })}</span>
    </>
  );
}

function LifeRest({ life }: { readonly life: LifeView }) {
  const say = useWords();
  return (
    <>
      <p>{life.lead}</p>
      <p className="life-foot">
        <span className="soft">{life.lookByLine}</span>{" "}
        <a
          className="why-link"
          href={whyAddress(life.lot)}
          aria-label={say("life.whyNamed", { name: life.name })}
        >
          {say("life.why")}
        </a>
      </p>
    </>
  );
}
