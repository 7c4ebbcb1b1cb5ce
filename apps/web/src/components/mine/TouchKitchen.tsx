import type { WrapId } from "@keepwright/catalogue";
import type { HandoutContext } from "@keepwright/handout";
import { wrapIds } from "@keepwright/planner";
import { useState } from "react";
import type { PlannerChange } from "../../state/plannerState.js";
import { useWords } from "../../words/words.js";
import { PlaceButtons } from "./PlaceButtons.js";
import type { LaidLot, Mine } from "./useMine.js";

interface TouchKitchenProps {
  readonly mine: Mine;
  readonly context: HandoutContext;
  readonly onChange: (change: PlannerChange) => void;
}

const wrapOf = ({ said }: LaidLot): WrapId =>
  said === undefined || said === "as planned" ? "none" : said.wrap;

/** The thing to be placed after this one: the next of which nothing is said, or this one where all is said. */
function following(lots: readonly LaidLot[], index: number): LaidLot {
  const order = [...lots.slice(index + 1), ...lots.slice(0, index)];
  return order.find(({ said }) => said === undefined) ?? lots[index]!;
}

/** A drawn kitchen in which one touch says where one thing lies; the next thing then waits for its touch. */
export function TouchKitchen({ mine, context, onChange }: TouchKitchenProps) {
  const say = useWords();
  const { lots, places } = mine;
  const [wanted, setWanted] = useState<string | undefined>(undefined);
  const [wrap, setWrap] = useState<WrapId | undefined>(undefined);
  const [told, setTold] = useState("");
  const firstUnsaid = lots.findIndex(({ said }) => said === undefined);
  const chosen = lots.findIndex(({ key }) => key === wanted);
  const index = chosen >= 0 ? chosen : Math.max(0, firstUnsaid);
  const now = lots[index];
  if (!now) return null;
  const wrapNow = wrap ?? wrapOf(now);
  const choose = (key: string) => {
    setWanted(key);
    setWrap(undefined);
  };
  const put = (place: string) => {
    onChange({ change: "lying", key: now.key, at: { place, wrap: wrapNow } });
    setTold(say("mine.touch.done", { name: now.name, place: places.get(place) ?? place }));
    choose(following(lots, index).key);
  };
  return (
    <div className="touch">
      <div className="fields">
        <label className="field wide">
          <span>{say("mine.touch.lot")}</span>
          <select value={now.key} onChange={(event) => choose(event.target.value)}>
            {lots.map(({ key, letter, name }) => (
              <option key={key} value={key}>
                {letter} {name}
              </option>
            ))}
          </select>
        </label>
        <label className="field wide">
          <span>{say("mine.touch.wrap")}</span>
          <select value={wrapNow} onChange={(event) => setWrap(event.target.value as WrapId)}>
            {wrapIds.map((id) => (
              <option key={id} value={id}>
                {context.speaker.say(`wrap.${id}`)}
              </option>
            ))}
          </select>
        </label>
      </div>
      <p className="soft">
        {say("mine.touch.help")} <span role="status">{told}</span>
      </p>
      <PlaceButtons mine={mine} now={now} onPut={put} />
    </div>
  );
}
