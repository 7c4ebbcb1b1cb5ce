import type { AskView } from "@keepwright/handout";
import { useWords } from "../../words/words.js";

/** Where, how and how long, as large as the window allows. */
export function AskFacts({ view }: { readonly view: AskView | undefined }) {
  const say = useWords();
  const waiting = <span className="soft">{say("ask.working")}</span>;
  return (
    <dl className="ask-facts" aria-busy={view === undefined}>
      <div>
        <dt>{say("ask.where")}</dt>
        <dd>{view?.where ?? waiting}</dd>
      </div>
      <div>
        <dt>{say("ask.how")}</dt>
        <dd>{view?.how ?? waiting}</dd>
        {view?.first.map((line) => (
          <dd key={line} className="less">
            {line}
          </dd>
        ))}
      </div>
      <div>
        <dt>{say("ask.until")}</dt>
        <dd>{view?.until ?? waiting}</dd>
        {view?.ends.map((line) => (
          <dd key={line} className="less">
            {line}
          </dd>
        ))}
      </div>
    </dl>
  );
}
