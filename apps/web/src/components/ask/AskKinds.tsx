import { addressOf } from "../../state/route.js";
import { useWords } from "../../words/words.js";

/** Every kind by its name, for those who would rather look than type. */
export function AskKinds({
  kinds,
  nameOf,
}: {
  readonly kinds: readonly string[];
  readonly nameOf: (id: string) => string;
}) {
  const say = useWords();
  return (
    <section aria-labelledby="ask-all">
      <h3 id="ask-all">{say("ask.all")}</h3>
      <ul className="ask-kinds">
        {kinds.map((id) => (
          <li key={id}>
            <a href={addressOf("ask", id)}>{nameOf(id)}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}
