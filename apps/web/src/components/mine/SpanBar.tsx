interface SpanBarProps {
  /** From and to, on a scale from 0 to `most`. */
  readonly low: number;
  readonly high: number;
  readonly most: number;
  /** Drawn with the plan's pattern rather than filled. */
  readonly plan?: boolean;
}

/** Width of the drawing; heights are of the same units. */
const width = 200;
const height = 10;
/** Least width at which a span can be seen. */
const least = 3;

/** A span as a bar on a line from nothing to the most. It is decoration: its words always stand beside it. */
export function SpanBar({ low, high, most, plan = false }: SpanBarProps) {
  const at = (value: number): number => (most > 0 ? (Math.min(value, most) / most) * width : 0);
  const long = Math.max(least, at(high) - at(low));
  return (
    <svg
      className="span-bar"
      viewBox={`0 0 ${width} ${height}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <line x1="0" y1={height / 2} x2={width} y2={height / 2} className="span-line" />
      {high > 0 && (
        <rect
          x={Math.min(at(low), width - least)}
          y="1"
          width={long}
          height={height - 2}
          className={plan ? "span-plan" : "span-mine"}
        />
      )}
    </svg>
  );
}
