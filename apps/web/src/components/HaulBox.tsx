import { useId } from "react";

interface HaulBoxProps {
  readonly text: string;
  readonly onChange: (text: string) => void;
}

/** Where the haul is typed, pasted or spoken. A plain text area: Tab leaves it, as everywhere else on the web. */
export function HaulBox({ text, onChange }: HaulBoxProps) {
  const id = useId();
  return (
    <section className="haul-box" aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`}>What came home</h2>
      <label htmlFor={id}>Type or paste it, one thing a line or all in a row.</label>
      <textarea
        id={id}
        value={text}
        rows={12}
        spellCheck={false}
        autoCapitalize="none"
        placeholder="2 lb apples, a bunch of cilantro, 3 avocados (one ripe)"
        onChange={(event) => onChange(event.target.value)}
      />
    </section>
  );
}
