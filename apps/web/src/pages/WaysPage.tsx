import "../styles/ways.css";
import { type TwoWaysView, twoWaysView } from "@keepwright/handout";
import type { UnsortedHabit } from "@keepwright/planner";
import { useMemo, useRef, useState } from "react";
import { useDesk } from "../behaviour/desk.js";
import { useProblemWords } from "../behaviour/useProblemWords.js";
import { useWays } from "../behaviour/useWays.js";
import type { Unplanned, WaysAsked } from "../behaviour/waysMessages.js";
import { BesidePlan } from "../components/mine/BesidePlan.js";
import { type Mine, useMine } from "../components/mine/useMine.js";
import { EveningSteps } from "../components/ways/EveningSteps.js";
import { FatePattern } from "../components/ways/FateBar.js";
import { Sides } from "../components/ways/Sides.js";
import { ThingTable } from "../components/ways/ThingTable.js";
import { useStepKeys } from "../components/ways/useStepKeys.js";
import { useSteps } from "../components/ways/useSteps.js";
import { arrangementSaid } from "../state/lying.js";
import { useWords } from "../words/words.js";

/** What the plan is set beside: a habit, or what the person said of how things lie. */
type Against = UnsortedHabit | "told";

/** The same food laid two ways, evening by evening: to be shown to a class, or looked at alone. */
export default function WaysPage() {
  const say = useWords();
  const desk = useDesk();
  const mine = useMine(desk);
  return (
    <section className="ways" aria-labelledby="ways-heading">
      <h2 id="ways-heading">{say("ways.title")}</h2>
      <BesidePlan ready={mine !== undefined} noHaul={say("ways.noHaul")} waiting={say("ways.waiting")} />
      {mine && <Laid mine={mine} />}
    </section>
  );
}

/** The ways there are in this kitchen: a place for each habit, and something said of how things lie. */
function useChoices({ kitchen, lots, plan }: Mine) {
  const { lying, vents } = useDesk().haul.state;
  return useMemo(() => {
    const arrangement = arrangementSaid({ lying, vents }, lots, kitchen, plan);
    const choices = new Map<Against, Unplanned>();
    if (kitchen.places.some(({ refrigerator }) => refrigerator !== undefined))
      choices.set("refrigerator", { habit: "refrigerator" });
    if (kitchen.places.some(({ kind }) => kind === "counter")) choices.set("counter", { habit: "counter" });
    if (arrangement) choices.set("told", { arrangement });
    return choices;
  }, [lying, vents, lots, kitchen, plan]);
}

function Laid({ mine }: { readonly mine: Mine }) {
  const say = useWords();
  const { worked } = useDesk();
  const choices = useChoices(mine);
  const [wanted, setWanted] = useState<Against>("refrigerator");
  const [first] = choices.keys();
  const against = choices.has(wanted) ? wanted : first;
  const unplanned = against && choices.get(against);
  const { asked, plan } = mine;
  const ask = useMemo(
    (): WaysAsked | undefined => unplanned && { ...asked, kind: "two ways", plan, unplanned },
    [asked, plan, unplanned],
  );
  const ways = useWays(ask);
  const { made, working } = ways;
  const problem = useProblemWords(ways);
  const view = useMemo(
    () => (made && worked ? twoWaysView(worked.context, made) : undefined),
    [made, worked],
  );
  return (
    <>
      <FatePattern />
      <fieldset className="choice">
        <legend>{say("ways.against")}</legend>
        {[...choices.keys()].map((each) => (
          <label key={each}>
            <input
              type="radio"
              name="ways-against"
              checked={each === against}
              onChange={() => setWanted(each)}
            />
            <span>{say(`ways.against.${each}`)}</span>
          </label>
        ))}
      </fieldset>
      {problem !== undefined && (
        <p role="alert" className="wrong wrong-box">
          {say("ways.problem", { problem: problem || say("ways.stopped") })}
        </p>
      )}
      <p role="status" className="ways-working">
        {working && say(view ? "ways.ranges" : "ways.waiting")}
      </p>
      {view && <Evenings view={view} />}
    </>
  );
}

function Evenings({ view }: { readonly view: TwoWaysView }) {
  const say = useWords();
  const steps = useSteps(view.evenings.length);
  const area = useRef<HTMLElement>(null);
  useStepKeys(area, steps);
  const evening = view.evenings[steps.at]!;
  return (
    <section ref={area} className="ways-evenings" aria-labelledby="ways-evening">
      <h3 id="ways-evening">{evening.heading}</h3>
      <p className="unseen" aria-live="polite">
        {evening.told}
      </p>
      <Sides view={view} evening={evening} />
      <EveningSteps steps={steps} heading={evening.heading} />
      <p className="soft ways-legend">{say("ways.legend")}</p>
      <ThingTable view={view} evening={evening} />
      <details>
        <summary>{say("ways.how")}</summary>
        <p>{view.lead}</p>
        <p>{view.sum}</p>
        {view.notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
        <p>{say("ways.keys")}</p>
      </details>
    </section>
  );
}
