import type { TwoWaysCell, TwoWaysEvening, TwoWaysView } from "@keepwright/handout";
import { FateBar } from "./FateBar.js";

interface ThingTableProps {
  readonly view: TwoWaysView;
  readonly evening: TwoWaysEvening;
}

/** Every thing on both sides on one evening: its state, why, where it lies, and a bar of what became of it. */
export function ThingTable({ view, evening }: ThingTableProps) {
  return (
    <table className="ways-things">
      <caption>
        {view.lots}: {evening.heading}
      </caption>
      <thead>
        <tr>
          <th scope="col">{view.thing}</th>
          <th scope="col">{view.sides.unsorted}</th>
          <th scope="col">{view.sides.planned}</th>
        </tr>
      </thead>
      <tbody>
        {evening.rows.map(({ lot, name, unsorted, planned }) => (
          <tr key={lot}>
            <th scope="row">{name}</th>
            <ThingCell side={view.sides.unsorted} cell={unsorted} />
            <ThingCell side={view.sides.planned} cell={planned} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function ThingCell({ side, cell }: { readonly side: string; readonly cell: TwoWaysCell }) {
  const { state, words, places, eaten, left, lost } = cell;
  return (
    <td className={`ways-cell ways-${state.replaceAll(" ", "-")}`} data-side={side}>
      <FateBar eaten={eaten} left={left} lost={lost} most={eaten + left + lost} thin />
      <span className="ways-state">{words}</span>
      {places !== "" && <span className="ways-place">{places}</span>}
    </td>
  );
}
