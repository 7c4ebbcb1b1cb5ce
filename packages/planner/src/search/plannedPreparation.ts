import type { WrapId } from "@keepwright/catalogue";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Programme } from "../problem/programme.js";
import { isAirtight } from "../rules/airtight.js";

/** Things that no longer make sense once produce has been washed. */
const notOnceWashed = new Set(["keep dry and unwashed", "wash just before use"]);

/** What is planned for a lot after its preparation: how it is wrapped, one stay after another. */
type Stays = readonly { readonly wrap: WrapId; readonly ripensHere: boolean }[];

/** Whether somebody said it came on its vine: “en rama” and “en racimo” are Spanish for it. */
const cameOnVine = (typed = ""): boolean => /\b(vines?|rama|racimos?)\b/i.test(typed);

const wetting = (wrap: WrapId): boolean => wrap === "damp towel" || wrap === "glass of water";
const closed = (wrap: WrapId): boolean => wrap === "paper bag" || isAirtight(wrap);

/**
 * When a thing to do would undo what is planned, or be undone by it. A wrapped crown keeps ripening gas in the stalk's end: no sense in a bag
 * that holds the gas around the whole fruit, or while it is to ripen. A cut stem end takes up water only where there is some. What is wrapped
 * damp or stands in water is not kept dry. What is shut in was not taken out of its bag. Inferred from the reason given for each.
 */
const undone: Readonly<Record<string, (stays: Stays) => boolean>> = {
  "wrap crown": (stays) => stays.some(({ wrap, ripensHere }) => ripensHere || closed(wrap)),
  "trim stem ends": (stays) => !stays.some(({ wrap }) => wetting(wrap)),
  "keep dry and unwashed": (stays) => stays.some(({ wrap }) => wetting(wrap)),
  "remove from sealed bag": (stays) => stays.some(({ wrap }) => isAirtight(wrap)),
};

/** The things to do [names of the catalogue] that agree with how a lot is then kept, and with each other: one word about washing is enough. */
export function agreeingPreparation(names: readonly string[], stays: Stays): string[] {
  const agreeing = names.filter((name) => !undone[name]?.(stays));
  return agreeing.filter(
    (name) => name !== "wash just before use" || !agreeing.includes("keep dry and unwashed"),
  );
}

/**
 * What to do before putting a lot away: the catalogue's list for its kind, with leaves and drying as the programme says, and without what
 * contradicts the programme. Cut produce has had all that done, but may still have to be dried; so has what an earlier plan put away.
 */
export function plannedPreparation(
  { commodity, form, lot, carried }: BoundLot,
  programme: Programme,
): string[] {
  const now = [
    ...(programme.leavesOff ? ["twist off leaves"] : []),
    ...(programme.dried ? ["dry well"] : []),
  ];
  if (form.cut || carried) return now;
  const usual = commodity.preparation
    .map((entry) => entry.do as string)
    .filter((name) => name !== "twist off leaves" && name !== "dry well")
    .filter((name) => name !== "keep on the vine" || cameOnVine(lot.typed))
    .filter((name) => !(lot.washed && notOnceWashed.has(name)));
  const stays = programme.stays.map(({ wrap, until }) => ({ wrap, ripensHere: until === "ripe" }));
  return [...now, ...new Set(agreeingPreparation(usual, stays))];
}
