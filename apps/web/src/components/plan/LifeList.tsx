import type { LifeView } from "@keepwright/handout";
import { memo } from "react";
import { whyAddress } from "../../state/route.js";
import { useWords } from "../../words/words.js";

interface LifeListProps {
  readonly heading: string;
  readonly lives: readonly LifeView[];
}

/** How long each lot lasts, shortest first, with the reason that tells most; all the rest is one touch away. */
export const LifeList = memo(function LifeList({ heading, lives }: LifeListProps) {
  return (
    <section className="words life-section">
      <h3>{heading}</h3>
      <ul className="lives">
        {lives.map((life) => (
          <Life key={life.lot} life={life} closed={lives.length > mostOpen} />
        ))}
      </ul>
    </section>
  );
});

/** So many are told one below the other; of more the first line of each is there, and the rest of it one touch away. Declared preference, no source. */
const mostOpen = 20;

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
