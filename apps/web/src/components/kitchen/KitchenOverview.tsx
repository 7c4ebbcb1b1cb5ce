import { describedKitchen, kitchenQuestions } from "@keepwright/planner";
import { useDesk } from "../../behaviour/desk.js";
import type { WorkedOut } from "../../behaviour/useWorkedOut.js";
import { kitchenOf } from "../../state/kitchenOf.js";
import { freshKey, freshKitchen, renamed } from "../../state/ownKitchens.js";
import type { OwnKitchen } from "../../state/plannerState.js";
import { addressOf } from "../../state/route.js";
import { AnswerList } from "./AnswerList.js";
import { faultLine } from "./Faults.js";
import { PeopleAndDays, PortionsAndAway } from "./HouseholdFields.js";
import { KitchenSelect } from "./KitchenSelect.js";
import { KitchenWarnings } from "./KitchenWarnings.js";
import { useKitchenWords } from "./kitchenWords.js";
import { OwnKitchenButtons } from "./OwnKitchenButtons.js";
import { OwnKitchenDrawing } from "./OwnKitchenDrawing.js";

interface KitchenOverviewProps {
  /** The kitchen chosen, where it is one of the person's own. */
  readonly own: OwnKitchen | undefined;
  readonly worked: WorkedOut;
}

/** The kitchen chosen: how it is drawn up, what was told of it, and who eats. */
export function KitchenOverview({ own, worked }: KitchenOverviewProps) {
  const say = useKitchenWords();
  const { haul } = useDesk();
  const { context } = worked;
  const kitchen = kitchenOf(haul.state);
  const { made } = worked.plan;
  const planned =
    made && JSON.stringify(made.asked.kitchen) === JSON.stringify(kitchen) ? made.plan.places : undefined;
  return (
    <section className="my-kitchen" aria-labelledby="my-kitchen-heading">
      <h2 id="my-kitchen-heading">{say("own.heading")}</h2>
      <div className="fields">
        <KitchenSelect state={haul.state} context={context} onChange={haul.change} />
        <BeginButton />
        <a className="button" href={addressOf("unpack")}>
          {say("own.toPlan")}
        </a>
      </div>
      {own ? <OwnTools own={own} /> : <p className="soft">{say("own.ordinary")}</p>}
      <AnswerFaults own={own} worked={worked} />
      <KitchenWarnings kitchen={kitchen} context={context} />
      <OwnKitchenDrawing kitchen={kitchen} context={context} planned={planned} />
      {own?.answers && <AnswerList answers={own.answers} />}
      <section aria-labelledby="household-heading">
        <h3 id="household-heading">{say("own.household")}</h3>
        <div className="fields">
          <PeopleAndDays />
          <PortionsAndAway />
        </div>
      </section>
    </section>
  );
}

/** Begins a kitchen of one's own and goes to its first question. */
function BeginButton() {
  const say = useKitchenWords();
  const { haul } = useDesk();
  const { kitchens } = haul.state;
  const name =
    kitchens.length === 0 ? say("own.firstName") : say("own.nextName", { number: kitchens.length + 1 });
  const begin = () => {
    haul.change({ change: "own kitchen", own: freshKitchen(kitchens, name) });
    location.hash = addressOf("kitchen", kitchenQuestions[0]);
  };
  return (
    <button type="button" className={kitchens.length === 0 ? "main-button" : ""} onClick={begin}>
      {say(kitchens.length === 0 ? "own.describe" : "own.describeAnother")}
    </button>
  );
}

function OwnTools({ own }: { readonly own: OwnKitchen }) {
  const say = useKitchenWords();
  const { haul } = useDesk();
  const { kitchens } = haul.state;
  const copy = () => {
    const name = say("own.copyName", { name: own.kitchen.name });
    haul.change({ change: "own kitchen", own: { ...renamed(own, name), key: freshKey(kitchens) } });
  };
  return (
    <>
      {!own.answers && <p className="soft">{say("own.imported")}</p>}
      <OwnKitchenButtons
        key={own.key}
        name={own.kitchen.name}
        onRename={(name) => haul.change({ change: "own kitchen", own: renamed(own, name) })}
        onCopy={copy}
        onRemove={() => haul.change({ change: "forget kitchen", key: own.key })}
      />
    </>
  );
}

/** Answers that will not do, each a way to its question. */
function AnswerFaults({ own, worked }: KitchenOverviewProps) {
  const say = useKitchenWords();
  const faults = own?.answers ? describedKitchen(own.answers, own.kitchen.name).faults : [];
  if (faults.length === 0) return null;
  return (
    <div className="wrong-box" role="alert">
      <p className="wrong">{say("own.faulty")}</p>
      <ul>
        {faults.map((fault) => (
          <li key={`${fault.question} ${fault.fault}`}>
            <a href={addressOf("kitchen", fault.question)}>{say(`ask.${fault.question}`)}</a>{" "}
            {faultLine(say, fault, worked.context)}
          </li>
        ))}
      </ul>
    </div>
  );
}
