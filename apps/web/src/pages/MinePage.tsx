import { useMemo } from "react";
import { useDesk } from "../behaviour/desk.js";
import type { JudgementAsked } from "../behaviour/judgeMessages.js";
import { type MadeJudgement, useJudgement } from "../behaviour/useJudgement.js";
import { BeginWith } from "../components/mine/BeginWith.js";
import { BesidePanel } from "../components/mine/BesidePanel.js";
import { BesidePlan } from "../components/mine/BesidePlan.js";
import { Helps, type TakenOver } from "../components/mine/Helps.js";
import { LotRows } from "../components/mine/LotRows.js";
import { TouchKitchen } from "../components/mine/TouchKitchen.js";
import { type Mine, useMine } from "../components/mine/useMine.js";
import { VentFields } from "../components/mine/VentFields.js";
import { SwatchPatterns } from "../components/Swatch.js";
import { changedKitchenKey } from "../state/changedKitchen.js";
import { arrangementSaid } from "../state/lying.js";
import { useWords } from "../words/words.js";

/** How things lie now, beside the plan; and what would help most. */
export default function MinePage() {
  const say = useWords();
  const desk = useDesk();
  const mine = useMine(desk);
  return (
    <>
      <SwatchPatterns />
      <section className="mine" aria-labelledby="mine-heading">
        <h2 id="mine-heading">{say("screen.mine")}</h2>
        <p>{say("mine.lead")}</p>
        <BesidePlan ready={mine !== undefined} noHaul={say("mine.noHaul")} waiting={say("mine.waiting")} />
        {mine && <Laying mine={mine} />}
      </section>
      {mine && <WhatHelps mine={mine} />}
    </>
  );
}

function Laying({ mine }: { readonly mine: Mine }) {
  const say = useWords();
  const { haul, worked } = useDesk();
  const { state, change } = haul;
  const { lots, kitchen, plan, asked } = mine;
  const arrangement = useMemo(
    () => arrangementSaid({ lying: state.lying, vents: state.vents }, lots, kitchen, plan),
    [state.lying, state.vents, lots, kitchen, plan],
  );
  const ask = useMemo(
    (): JudgementAsked | undefined => arrangement && { ...asked, kind: "judge", arrangement, plan },
    [arrangement, asked, plan],
  );
  const judged = useJudgement(ask);
  if (!worked) return null;
  const move = ({ oneMove, judgement }: MadeJudgement) => {
    if (oneMove?.move === "lot") {
      const moved = lots.find(({ lot }) => lot.id === oneMove.lot);
      if (moved) change({ change: "lying", key: moved.key, at: "as planned" });
    }
    if (oneMove?.move === "vent") {
      const { place } = oneMove;
      const vent = judgement.plan.vents.find((each) => each.place === place);
      if (vent) change({ change: "vent", place, setting: vent.setting });
    }
  };
  return (
    <>
      <BeginWith mine={mine} onChange={change} />
      <div className="mine-sides">
        <section className="lying" aria-labelledby="lying-heading">
          <h3 id="lying-heading">{say("mine.where")}</h3>
          <TouchKitchen mine={mine} context={worked.context} onChange={change} />
          <VentFields mine={mine} vents={state.vents} onChange={change} />
        </section>
        <BesidePanel state={judged} said={ask !== undefined} context={worked.context} onMove={move} />
        <section className="listed" aria-labelledby="listed-heading">
          <h3 id="listed-heading">{say("mine.lists")}</h3>
          <LotRows mine={mine} context={worked.context} onChange={change} />
        </section>
      </div>
    </>
  );
}

function WhatHelps({ mine }: { readonly mine: Mine }) {
  const say = useWords();
  const { haul, worked } = useDesk();
  const take = (taken: TakenOver) => {
    if (taken.kind === "portions") {
      haul.change({ change: "portions", portions: taken.portions });
      return;
    }
    const name = say("helps.changedKitchen", { name: mine.kitchen.name });
    const own = { key: changedKitchenKey(haul.state.kitchens), kitchen: { ...taken.kitchen, name } };
    haul.change({ change: "own kitchen", own });
  };
  return worked && <Helps asked={mine.asked} context={worked.context} onTake={take} />;
}
