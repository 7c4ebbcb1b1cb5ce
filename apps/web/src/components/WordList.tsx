interface WordListProps {
  readonly heading: string;
  readonly lines: readonly string[];
  readonly ordered?: boolean;
  readonly className?: string;
}

/** A heading and its sentences; nothing at all when there are none. */
export function WordList({ heading, lines, ordered = false, className = "" }: WordListProps) {
  if (lines.length === 0) return null;
  const items = lines.map((line) => <li key={line}>{line}</li>);
  return (
    <section className={`words ${className}`}>
      <h3>{heading}</h3>
      {ordered ? <ol>{items}</ol> : <ul>{items}</ul>}
    </section>
  );
}
