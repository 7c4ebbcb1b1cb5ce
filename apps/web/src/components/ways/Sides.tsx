import type { TwoWaysEvening, TwoWaysSide, TwoWaysView } from "@keepwright/handout";
import { FateBar } from "./FateBar.js";

interface SidesProps {
  readonly view: TwoWaysView;
  readonly evening: TwoWaysEvening;
}

/** Both sides on one evening in large figures, each with its bar of all that came home. */
export function Sides({ view, evening }: SidesProps) {
  return (
    <div className="ways-sides">
      <Side view={view} name={view.sides.unsorted} side={evening.unsorted} />
      <Side view={view} name={view.sides.planned} side={evening.planned} />
    </div>
  );
}

function Side({ view, name, side }: { view: TwoWaysView; name: string; side: TwoWaysSide }) {
  const { fates, brought } = view;
  const figures = [
    { of: "eaten", name: fates.eaten, figure: side.eaten },
    { of: "left", name: fates.left, figure: side.left },
    { of: "lost", name: fates.lost, figure: side.lost },
  ] as const;
  return (
    <section className="ways-side" aria-label={name}>
      <h4>{name}</h4>
      <FateBar eaten={side.eaten.grams} left={side.left.grams} lost={side.lost.grams} most={brought} />
      <dl>
        {figures.map(({ of, name: fate, figure: { short, range } }) => (
          <div key={of} className={`ways-figure ways-${of}`}>
            <dt>{fate}</dt>
            <dd>
              <strong>{short}</strong>
              {range !== "" && <span className="ways-range">{range}</span>}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
