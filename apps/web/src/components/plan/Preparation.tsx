import type { PreparationView } from "@keepwright/handout";

interface PreparationProps {
  readonly tasks: readonly PreparationView[];
  readonly nowHeading: string;
  readonly leaveHeading: string;
}

/** What to do before putting away, numbered; then what to leave as it is. The reason stands below each, lighter. */
export function Preparation({ tasks, nowHeading, leaveHeading }: PreparationProps) {
  const now = tasks.filter((task) => task.now);
  const leave = tasks.filter((task) => !task.now);
  return (
    <div>
      {now.length > 0 && (
        <section className="words">
          <h3>{nowHeading}</h3>
          <ol className="tasks">{now.map(taskItem)}</ol>
        </section>
      )}
      {leave.length > 0 && (
        <section className="words">
          <h3>{leaveHeading}</h3>
          <ul className="tasks">{leave.map(taskItem)}</ul>
        </section>
      )}
    </div>
  );
}

const taskItem = ({ line, what, why }: PreparationView) => (
  <li key={line}>
    {what} <span className="soft below">{why}</span>
  </li>
);
