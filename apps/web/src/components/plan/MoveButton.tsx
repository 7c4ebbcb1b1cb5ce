import type { WrapId } from "@keepwright/catalogue";
import { type HandoutContext, kitchenWords } from "@keepwright/handout";
import { type Kitchen, type Plan, type PlannedLot, wrapIds } from "@keepwright/planner";
import { useState } from "react";
import { useCarried } from "../../behaviour/useCarrying.js";
import { useMoved } from "../../behaviour/useMoving.js";
import { useWords } from "../../words/words.js";
import { useModal } from "../useModal.js";

interface MoveButtonProps {
  readonly part: string;
  readonly name: string;
}

/** Drags its lot by pointer or finger, carries it by the space bar and the arrows, and opens a list of places when it is touched. */
export function MoveButton({ part, name }: MoveButtonProps) {
  const say = useWords();
  const carrying = useCarried();
  if (!carrying) return null;
  return (
    <button
      type="button"
      className="move-button"
      data-move={part}
      aria-label={say("move.named", { name })}
      aria-describedby="move-hint"
      {...carrying.handle(part, true)}
      {...carrying.keys(part)}
      onClick={() => carrying.openMenu(part)}
    >
      {say("move.short")}
    </button>
  );
}

interface MoveMenuProps {
  readonly lot: PlannedLot;
  readonly name: string;
  readonly kitchen: Kitchen;
  readonly places: Plan["places"];
  readonly context: HandoutContext;
  readonly onClose: () => void;
}

/** Where else, and how wrapped: chosen from lists, for whoever does not drag. */
export function MoveMenu({ lot, name, kitchen, places, context, onClose }: MoveMenuProps) {
  const say = useWords();
  const moved = useMoved();
  const modal = useModal(onClose);
  const first = lot.stays[0];
  const [place, setPlace] = useState(first?.place ?? "");
  const [wrap, setWrap] = useState<WrapId>(first?.wrap ?? "none");
  const wraps = wrapIds.filter((id) => id === "none" || id === first?.wrap || kitchen.wraps.includes(id));
  const { speaker } = context;
  return (
    <dialog {...modal.props} aria-labelledby="move-heading">
      <form
        method="dialog"
        onSubmit={() => {
          if (place !== first?.place || wrap !== first?.wrap) moved?.attempt(lot.id, { place, wrap });
        }}
      >
        <h2 id="move-heading">{say("move.heading", { name })}</h2>
        <label className="field">
          <span>{say("move.place")}</span>
          <select value={place} onChange={(event) => setPlace(event.target.value)}>
            {places.map((each) => (
              <option key={each.place} value={each.place}>
                {kitchenWords(context, each.name)}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>{say("move.wrap")}</span>
          <select value={wrap} onChange={(event) => setWrap(event.target.value as WrapId)}>
            {wraps.map((id) => (
              <option key={id} value={id}>
                {speaker.capital(speaker.say(`wrap.${id}`))}
              </option>
            ))}
          </select>
        </label>
        <p className="dialog-buttons">
          <button type="button" onClick={modal.close}>
            {say("move.leave")}
          </button>
          <button type="submit" className="main-button">
            {say("move.see")}
          </button>
        </p>
      </form>
    </dialog>
  );
}
