import { useId } from "react";

interface CautionsProps {
  readonly heading: string;
  readonly lines: readonly string[];
  readonly pressing?: boolean;
}

/** Cautions in a frame of their own; pressing ones in a heavier frame. Nothing at all when there are none. */
export function Cautions({ heading, lines, pressing = false }: CautionsProps) {
  const id = useId();
  if (lines.length === 0) return null;
  return (
    <section className={pressing ? "cautions pressing" : "cautions"} aria-labelledby={id}>
      <h3 id={id}>{heading}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
