/**
 * What stands beside or in place of fresh produce and is not kept as such here: spoilt or unsafe states, and foods made
 * from produce. Each name has its own question, with its caution, and never gives a lot by itself.
 */
export type NotKept =
  | "raw sprouts"
  | "wild mushrooms"
  | "rhubarb leaves"
  | "in oil"
  | "rotten"
  | "slimy"
  | "fermenting"
  | "mouldy"
  | "mouldy firm"
  | "green potatoes"
  | "sprouted potatoes"
  | "sprouted"
  | "cooked"
  | "frozen"
  | "tinned"
  | "dried"
  | "juice"
  | "pickled"
  | "made from it"
  | "no produce";

/** What a word tells before it is known which kind it speaks of. */
export type Mark =
  | Exclude<NotKept, "no produce" | "rhubarb leaves" | "mouldy firm" | "green potatoes" | "sprouted potatoes">
  | "oil";

export interface NotKeptEntry {
  /** Id in the catalogue's safety data, where the caution has its value and source; the rest is common practice, no source. */
  readonly safety?: string;
  /** May what is left be planned once the person has looked at it? Then its kinds are offered. */
  readonly restMayBePlanned: boolean;
}

const leave: NotKeptEntry = { restMayBePlanned: false };

/** Every reason, the gravest first: where several hold, the first is told. */
export const notKept: Readonly<Record<NotKept, NotKeptEntry>> = {
  "wild mushrooms": leave,
  // The catalogue's guidance on rhubarb has the source.
  "rhubarb leaves": leave,
  "in oil": { safety: "garlic-in-oil-refrigerated-days", restMayBePlanned: false },
  "raw sprouts": { safety: "sprouts-at-most", restMayBePlanned: false },
  rotten: leave,
  slimy: leave,
  fermenting: leave,
  mouldy: { safety: "mould-on-soft-keep", restMayBePlanned: false },
  "mouldy firm": { safety: "mould-on-firm-cut-around", restMayBePlanned: true },
  "green potatoes": { safety: "potato-glycoalkaloids", restMayBePlanned: true },
  "sprouted potatoes": { safety: "potato-glycoalkaloids", restMayBePlanned: true },
  sprouted: { restMayBePlanned: true },
  cooked: leave,
  frozen: leave,
  tinned: leave,
  dried: leave,
  juice: leave,
  pickled: leave,
  "made from it": leave,
  "no produce": leave,
};

const mushrooms: ReadonlySet<string> = new Set(["mushroom", "wild-mushroom"]);
const potatoes: ReadonlySet<string> = new Set(["potato", "new-potato"]);
/** Firm enough that mould may be cut away: those the source names; every other kind is treated as soft. */
const firm: ReadonlySet<string> = new Set(["cabbage", "sweet-pepper", "carrot"]);

const all = (kinds: readonly string[], among: ReadonlySet<string>) =>
  kinds.length > 0 && kinds.every((kind) => among.has(kind));

/** "Sprouted" without a name means seeds; sprouting broccoli is only its name. */
function sproutedReason(kinds: readonly string[]): NotKept | undefined {
  if (kinds.length === 0) return "raw sprouts";
  if (kinds.includes("broccoli")) return undefined;
  return all(kinds, potatoes) ? "sprouted potatoes" : "sprouted";
}

/** The reason a mark gives beside a kind; undefined where it means nothing there ("wild strawberries"). */
export function reasonOf(mark: Mark, kinds: readonly string[]): NotKept | undefined {
  if (mark === "wild mushrooms") return kinds.some((kind) => mushrooms.has(kind)) ? mark : undefined;
  if (mark === "oil") return kinds.length > 0 ? "in oil" : "made from it";
  if (mark === "mouldy") return all(kinds, firm) ? "mouldy firm" : mark;
  if (mark === "sprouted") return sproutedReason(kinds);
  return mark;
}

/** Green means more glycoalkaloids in potatoes, and nothing unsafe in other kinds. */
export const greenIsUnsafe = (kinds: readonly string[]) => all(kinds, potatoes);

const order = Object.keys(notKept) as NotKept[];
/** The gravest of several reasons. */
export const gravest = (reasons: readonly (NotKept | undefined)[]): NotKept | undefined =>
  order.find((reason) => reasons.includes(reason));
