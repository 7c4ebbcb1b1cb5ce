import type { Course, PlannedLot } from "@keepwright/planner";
import { across, type Curve, chart, dayStep, labelHeights, pathOf, up } from "../../drawing/curves.js";
import { useWords } from "../../words/words.js";

interface CourseChartProps {
  readonly name: string;
  readonly curves: readonly Curve[];
  readonly lot: PlannedLot;
}

/** How far ageing, drying and ripening have come, day by day; the span of its end as a band, the meals as marks below. */
export function CourseChart({ name, curves, lot }: CourseChartProps) {
  const say = useWords();
  const days = (curves[0]?.values.length ?? 1) - 1;
  const { early, late } = lot.life;
  return (
    <svg
      className="course"
      viewBox={`0 0 ${chart.width} ${chart.height}`}
      role="img"
      aria-label={say("why.picture", { name })}
    >
      {early < days && (
        <rect
          className="life-band"
          x={across(early, days)}
          y={chart.top}
          width={across(late, days) - across(early, days)}
          height={chart.bottom - chart.top}
        />
      )}
      <Axes days={days} />
      <Curves curves={curves} />
      {lot.eatOn.map(({ day, portions }) => (
        <g key={day} className="meal">
          <path d={`M${across(day, days)} ${chart.bottom + 22}l-5 8h10z`} />
          <text x={across(day, days)} y={chart.bottom + 42} textAnchor="middle">
            {portions}
          </text>
        </g>
      ))}
      <text x={chart.right + 15} y={chart.bottom + 42}>
        {say("why.portions")}
      </text>
    </svg>
  );
}

function Axes({ days }: { readonly days: number }) {
  const say = useWords();
  const step = dayStep(days);
  const marked = Array.from({ length: Math.floor(days / step) + 1 }, (_, index) => index * step);
  return (
    <g className="axes">
      <path d={`M${chart.left} ${chart.top}V${chart.bottom}H${chart.right}`} />
      <path className="end-line" d={`M${chart.left} ${chart.top}H${chart.right}`} />
      <text x={chart.left - 5} y={chart.top + 4} textAnchor="end">
        {say("why.axis.end")}
      </text>
      <text x={chart.left - 5} y={chart.bottom + 4} textAnchor="end">
        0
      </text>
      {marked.map((day) => (
        <text key={day} x={across(day, days)} y={chart.bottom + 16} textAnchor="middle">
          {day}
        </text>
      ))}
      <text x={chart.right + 15} y={chart.bottom + 16}>
        {say("why.axis.days")}
      </text>
    </g>
  );
}

function Curves({ curves }: Pick<CourseChartProps, "curves">) {
  const say = useWords();
  const heights = labelHeights(curves.map(({ values }) => up(values.at(-1) ?? 0)));
  return curves.map((curve, index) => (
    <g key={curve.name} className={`curve ${curve.name}`}>
      <path d={pathOf(curve)} />
      {/* Which is which, where two end at one height. */}
      <path d={`M${chart.right + 8} ${heights[index] ?? 0}h20`} />
      <text x={chart.right + 32} y={(heights[index] ?? 0) + 4}>
        {say(`why.curve.${curve.name}`)}
      </text>
    </g>
  ));
}

interface CourseTableProps {
  readonly course: Course;
  readonly curves: readonly Curve[];
  readonly lot: PlannedLot;
}

/** The same as the drawing, in figures. */
export function CourseTable({ course, curves, lot }: CourseTableProps) {
  const say = useWords();
  return (
    <details>
      <summary>{say("why.table")}</summary>
      <table className="course-table">
        <thead>
          <tr>
            <th scope="col">{say("why.day")}</th>
            {curves.map(({ name }) => (
              <th key={name} scope="col">
                {say(`why.column.${name}`)}
              </th>
            ))}
            <th scope="col">{say("why.column.portions")}</th>
          </tr>
        </thead>
        <tbody>
          {course.ageing.map((_, day) => (
            <tr key={day}>
              <th scope="row">{say("why.dayNumber", { day })}</th>
              {curves.map(({ name, values }) => (
                <td key={name}>{say("why.percent", { percent: Math.round(100 * (values[day] ?? 0)) })}</td>
              ))}
              <td>{lot.eatOn.find((meal) => meal.day === day)?.portions ?? ""}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
