import { type HandoutContext, lotNames, placeNames } from "@keepwright/handout";
import { type ReactNode, useEffect, useMemo, useState } from "react";
import { CarryingProvider, useCarrying } from "../../behaviour/useCarrying.js";
import type { Moving } from "../../behaviour/useMoving.js";
import { useWords } from "../../words/words.js";
import { MoveMenu } from "./MoveButton.js";
import { TrialPanel } from "./TrialPanel.js";

interface MovableProps {
  readonly moving: Moving;
  readonly context: HandoutContext;
  readonly children: ReactNode;
}

/** A plan whose lots can be put elsewhere: by dragging, by keys and by lists. */
export function Movable({ moving, context, children }: MovableProps) {
  const say = useWords();
  const [menu, setMenu] = useState<string | undefined>();
  const { plan, asked } = moving.shown;
  const lotOf = (part: string | undefined) => plan.lots.find(({ id }) => id === part);
  const carrying = useCarrying({
    places: plan.places.map(({ place }) => place),
    placeOf: (part) => lotOf(part)?.stays[0]?.place,
    onDrop(part, place) {
      const lot = lotOf(part);
      if (lot) moving.attempt(part, { place, wrap: lot.stays[0]?.wrap ?? "none" });
    },
  });
  const forParts = useMemo(() => ({ ...carrying, openMenu: setMenu }), [carrying]);
  const { carried } = carrying;
  const { prepare } = moving;
  const atHand = carried !== undefined || menu !== undefined;
  useEffect(() => {
    if (atHand) prepare();
  }, [atHand, prepare]);
  const chosen = lotOf(menu);
  const name = (part: string) => lotNames(context, plan).get(part) ?? part;
  return (
    <CarryingProvider value={forParts}>
      {children}
      <p id="move-hint" hidden>
        {say("move.hint")}
      </p>
      {chosen && (
        <MoveMenu
          key={chosen.id}
          lot={chosen}
          name={context.speaker.capital(name(chosen.id))}
          kitchen={asked.kitchen}
          places={plan.places}
          context={context}
          onClose={() => setMenu(undefined)}
        />
      )}
      {carried?.by === "pointer" && (
        <p className="in-hand" aria-hidden="true" style={{ left: carried.x, top: carried.y }}>
          {name(carried.part)}
          {carried.over !== undefined && <strong> → {placeNames(context, plan).get(carried.over)}</strong>}
        </p>
      )}
      <TrialPanel moving={moving} carried={carried} context={context} />
    </CarryingProvider>
  );
}
