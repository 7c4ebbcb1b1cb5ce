import { useWords } from "../words/words.js";

export default function MinePage() {
  const say = useWords();
  return (
    <section aria-labelledby="mine-heading">
      <h2 id="mine-heading">{say("screen.mine")}</h2>
    </section>
  );
}
