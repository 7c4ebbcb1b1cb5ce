import { useDesk } from "../behaviour/desk.js";
import { KitchenChooser } from "../components/KitchenChooser.js";

/** The kitchen and who eats. */
export default function KitchenPage() {
  const { haul, worked } = useDesk();
  return worked && <KitchenChooser state={haul.state} context={worked.context} onChange={haul.change} />;
}
