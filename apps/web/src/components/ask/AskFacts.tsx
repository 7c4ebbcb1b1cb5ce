import type { AskFactsView } from "@keepwright/handout";
import { useWords } from "../../words/words.js";

interface AskFactsProps {
  /** Undefined while it is worked out. */
  readonly facts: AskFactsView | undefined;
  /** The longest that may come: so much room is kept, and nothing moves when it does. */
  readonly room: AskFactsView;
}

/** Where, how and how long, as large as the window allows. */
export function AskFacts({ facts, room }: AskFactsProps) {
  const say = useWords();
  return (
    <dl className="ask-facts" aria-busy={facts === undefined}>
      <Fact name={say("ask.where")} fact={facts?.where} room={room.where} />
      <Fact name={say("ask.how")} fact={facts?.how} room={room.how} lines={facts?.first} more={room.first} />
      <Fact
        name={say("ask.until")}
        fact={facts?.until}
        room={room.until}
        lines={facts?.ends}
        more={room.ends}
      />
    </dl>
  );
}

interface FactProps {
  readonly name: string;
  readonly fact: string | undefined;
  readonly room: string;
  readonly lines?: readonly string[] | undefined;
  readonly more?: readonly string[];
}

/** One fact with lines below. What only keeps room is drawn by the style sheet, unseen: nobody is read it. */
function Fact({ name, fact, room, lines = [], more = [] }: FactProps) {
  const say = useWords();
  return (
    <div>
      <dt>{name}</dt>
      <dd className="held" data-room={room}>
        <span>{fact ?? <span className="soft">{say("ask.working")}</span>}</span>
      </dd>
      {lines.length + more.length > 0 && (
        <dd className="held less" data-room={more.join("\n")}>
          <span>
            {lines.map((line) => (
              <span key={line} className="ask-line">
                {line}
              </span>
            ))}
          </span>
        </dd>
      )}
    </div>
  );
}
