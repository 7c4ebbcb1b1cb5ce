interface WordListProps {
  readonly heading: string;
  readonly lines: readonly string[];
}

/** A heading and its sentences; nothing at all when there are none. */
export function WordList({ heading, lines }: WordListProps) {
  if (lines.length === 0) return null;
  return (
    <section className="words">
      <h3>{heading}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
