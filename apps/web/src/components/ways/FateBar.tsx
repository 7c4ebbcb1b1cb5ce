interface FateBarProps {
  /** Amounts in the order eaten, still good, lost; the bar is as long as `most`. */
  readonly eaten: number;
  readonly left: number;
  readonly lost: number;
  readonly most: number;
  readonly thin?: boolean;
}

const width = 1000;
const seam = 2;

/** The pattern of what is lost, once for all bars of the screen. */
export function FatePattern() {
  return (
    <svg width="0" height="0" aria-hidden="true" className="pattern-store">
      <defs>
        <pattern
          id="fate-lost"
          width="9"
          height="9"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="9" height="9" className="fate-ground" />
          <rect width="4" height="9" className="fate-hatch" />
        </pattern>
      </defs>
    </svg>
  );
}

/** What became of an amount, as one bar. It is decoration: the words and figures always stand beside it. */
export function FateBar({ eaten, left, lost, most, thin = false }: FateBarProps) {
  const long = (grams: number): number => (most > 0 ? (grams / most) * width : 0);
  const parts = [
    { name: "eaten", from: 0, grams: eaten },
    { name: "left", from: eaten, grams: left },
    { name: "lost", from: eaten + left, grams: lost },
  ];
  return (
    <svg
      className={thin ? "fate-bar fate-thin" : "fate-bar"}
      viewBox={`0 0 ${width} 40`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {parts.map(({ name, from, grams }) => (
        <rect
          key={name}
          className={`fate fate-${name}`}
          style={{ x: `${long(from)}px`, width: `${Math.max(0, long(grams) - seam)}px` }}
          y="2"
          height="36"
        />
      ))}
    </svg>
  );
}
