import { type KitchenAnswers, type KitchenQuestion, kitchenQuestions } from "@keepwright/planner";
import { useDesk } from "../behaviour/desk.js";
import { KitchenOverview } from "../components/kitchen/KitchenOverview.js";
import { QuestionScreen } from "../components/kitchen/QuestionScreen.js";
import { withAnswers } from "../state/ownKitchens.js";

const isQuestion = (on: string | undefined): on is KitchenQuestion =>
  kitchenQuestions.some((question) => question === on);

/** The kitchen as it stands, or, at an address of its own, one of the questions about it. */
export default function KitchenPage({ on }: { readonly on: string | undefined }) {
  const { haul, worked } = useDesk();
  if (!worked) return null;
  const own = haul.state.kitchens.find(({ key }) => key === haul.state.kitchen);
  if (!isQuestion(on) || !own?.answers) return <KitchenOverview own={own} worked={worked} />;
  const onAnswer = (changes: KitchenAnswers) =>
    haul.change({ change: "own kitchen", own: withAnswers(own, changes) });
  return <QuestionScreen question={on} own={own} context={worked.context} onAnswer={onAnswer} />;
}
