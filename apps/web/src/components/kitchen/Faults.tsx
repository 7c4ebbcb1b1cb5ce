import { type HandoutContext, temperatureWords } from "@keepwright/handout";
import { type AnswerFault, coldestPlace } from "@keepwright/planner";
import { type KitchenSay, useKitchenWords } from "./kitchenWords.js";

interface FaultsProps {
  readonly id: string;
  readonly faults: readonly AnswerFault[];
  readonly context: HandoutContext;
}

/** What will not do and what would: the thing, the value, the remedy. What was typed is still in its field. */
export function Faults({ id, faults, context }: FaultsProps) {
  const say = useKitchenWords();
  if (faults.length === 0) return null;
  return (
    <div id={id} className="wrong-box">
      {faults.map((fault) => (
        <p key={`${fault.question} ${fault.fault}`} className="wrong">
          {faultLine(say, fault, context)}
        </p>
      ))}
      <p>{say("fault.kept")}</p>
    </div>
  );
}

/** A fault of an answer in a sentence. */
export function faultLine(say: KitchenSay, fault: AnswerFault, { speaker, units }: HandoutContext): string {
  const degrees = (celsius: number) => temperatureWords(speaker, units, celsius, 1);
  switch (fault.fault) {
    case "not a number":
      return say("fault.not a number", { typed: fault.typed });
    case "beyond": {
      const { typed, least, most, unit } = fault;
      return say("fault.beyond", { typed, least, most, unit });
    }
    case "freezes":
      return say("fault.freezes", { celsius: degrees(fault.celsius), least: degrees(coldestPlace) });
    case "as warm as the room":
    case "warmer than the room":
      return say(`fault.${fault.fault}`, { celsius: degrees(fault.celsius), room: degrees(fault.room) });
    case "other":
      return say("fault.other");
  }
}
