import { useWords } from "../words/words.js";

export default function AskPage() {
  const say = useWords();
  return (
    <section aria-labelledby="ask-heading">
      <h2 id="ask-heading">{say("screen.ask")}</h2>
    </section>
  );
}
