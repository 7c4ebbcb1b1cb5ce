import type { HandoutContext } from "@keepwright/handout";
import { lazy, Suspense, useEffect, useRef } from "react";
import type { MadePlan } from "../../behaviour/usePlan.js";
import { useRoute } from "../../behaviour/useRoute.js";
import { addressOf } from "../../state/route.js";

const WhyDialog = lazy(() => import("./WhyDialog.js"));

interface WhyOverPlanProps {
  readonly made: MadePlan;
  readonly changed: boolean;
  readonly context: HandoutContext;
}

/** Opens the reasons that the address names. Closing goes back to the address before, where there is one of this page. */
export function WhyOverPlan({ made, changed, context }: WhyOverPlanProps) {
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
    <Suspense fallback={null}>
      <WhyDialog key={why} part={why} made={made} changed={changed} context={context} onClose={close} />
    </Suspense>
  );
}
