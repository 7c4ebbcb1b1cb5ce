import type { HandoutContext } from "@keepwright/handout";
import { Suspense, useEffect, useRef } from "react";
import { useDesk } from "../../behaviour/desk.js";
import { lazyPart } from "../../behaviour/lazyPart.js";
import type { MadePlan } from "../../behaviour/usePlan.js";
import { useRoute } from "../../behaviour/useRoute.js";
import { addressOf } from "../../state/route.js";
import { Safely } from "../Safely.js";

const WhyDialog = lazyPart(() => import("./WhyDialog.js"));

interface WhyOverPlanProps {
  readonly made: MadePlan;
  readonly changed: boolean;
  readonly context: HandoutContext;
}

/** Opens the reasons that the address names. Closing goes back to the address before, where there is one of this page. */
export function WhyOverPlan({ made, changed, context }: WhyOverPlanProps) {
  const { keeper } = useDesk().haul;
  const { why } = useRoute();
  const came = useRef(false);
  useEffect(() => {
    if (why === undefined) came.current = true;
  }, [why]);
  const close = () => {
    // Going back by the browser has closed it already.
    if (!location.hash.startsWith("#/why")) return;
    if (came.current) history.back();
    else location.replace(addressOf("unpack"));
  };
  if (why === undefined) return null;
  return (
    <Safely of="why" entered={() => keeper.now().state} until={why} asked>
      <Suspense fallback={null}>
        <WhyDialog key={why} part={why} made={made} changed={changed} context={context} onClose={close} />
      </Suspense>
    </Safely>
  );
}
