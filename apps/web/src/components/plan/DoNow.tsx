import type { PreparationView } from "@keepwright/handout";
import { useDesk } from "../../behaviour/desk.js";
import { isDone, type NowTask } from "../../state/nowTasks.js";
import { useWords } from "../../words/words.js";
import { ByWrap } from "./ByWrap.js";
import type { Marks } from "./marks.js";

interface DoNowProps {
  readonly tasks: readonly NowTask[];
  readonly marks: Marks;
  /** Are the places ticked off where they are drawn, and not here? */
  readonly ticksAtPlaces: boolean;
}

/** What to do now, in order, to be ticked off with a wet thumb. A ticked line stays where it is. */
export function DoNow({ tasks, marks, ticksAtPlaces }: DoNowProps) {
  const say = useWords();
  const { haul } = useDesk();
  const done = new Set(haul.state.done);
  const left = tasks.filter((task) => !isDone(task, done)).length;
  return (
    <section className="do-now" aria-labelledby="do-now-heading">
      <h3 id="do-now-heading">{say("now.heading")}</h3>
      <p role="status" className="left-to-do">
        {left === 0 ? say("now.allDone") : say("now.left", { count: left })}
      </p>
      <ol className="ticks">
        {tasks
          .filter(({ kind }) => !(ticksAtPlaces && kind === "put away"))
          .map((task) => (
            <Task
              key={task.keys.join()}
              task={task}
              done={isDone(task, done)}
              marks={marks}
              onTick={(now) => haul.change({ change: "done", tasks: task.keys, done: now })}
            />
          ))}
      </ol>
      {ticksAtPlaces && tasks.some(({ kind }) => kind === "put away") && (
        <p className="soft">{say("now.awayBelow")}</p>
      )}
    </section>
  );
}

interface TaskProps {
  readonly task: NowTask;
  readonly done: boolean;
  readonly marks: Marks;
  readonly onTick: (done: boolean) => void;
}

function Task({ task, done, marks, onTick }: TaskProps) {
  return (
    <li className={done ? "done" : undefined}>
      <label>
        <input type="checkbox" checked={done} onChange={(event) => onTick(event.target.checked)} />
        <TaskWords task={task} marks={marks} />
      </label>
    </li>
  );
}

function TaskWords({ task, marks }: Pick<TaskProps, "task" | "marks">) {
  const say = useWords();
  if (task.kind === "put away")
    return (
      <span>
        <span className="what">{say("now.putAway", { place: task.what })}</span>
        <ByWrap entries={task.entries} marks={marks} />
      </span>
    );
  return (
    <span>
      <span className="what">
        {task.place === undefined ? task.what : say("now.atPlace", { place: task.place, what: task.what })}
      </span>
      {task.why !== undefined && <span className="soft below">{task.why}</span>}
    </span>
  );
}

/** What asks for nothing but to be left alone, with the reason below. */
export function LeaveAsItIs({
  heading,
  tasks,
}: {
  readonly heading: string;
  readonly tasks: readonly PreparationView[];
}) {
  const leave = tasks.filter(({ now }) => !now);
  if (leave.length === 0) return null;
  return (
    <section className="words leave">
      <h3>{heading}</h3>
      <ul>
        {leave.map(({ line, what, why }) => (
          <li key={line}>
            {what} <span className="soft below">{why}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
