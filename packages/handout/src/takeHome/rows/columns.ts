/** What a column holds. “day” is a day of the calendar as in ISO 8601, “word” one of a fixed set, “text” anything. */
export type ColumnType = "text" | "word" | "day" | "whole number" | "number";

/** One column of a table of rows: its name is that of the field in JSON too. */
export interface Column {
  readonly name: string;
  readonly type: ColumnType;
  /** Of a number; absent where it has none. */
  readonly unit?: string;
  /** The words there can be, where they are few. */
  readonly words?: readonly string[];
  /** Whether it may be empty (null in JSON), and then why. */
  readonly empty?: string;
  readonly meaning: string;
}

const shared = [
  { name: "plan_from", type: "day", meaning: "first day of the plan" },
  { name: "part", type: "text", meaning: "part of a lot, by its id in the plan" },
  { name: "lot", type: "text", meaning: "lot it is a part of, by its id in the plan" },
  { name: "kind", type: "text", meaning: "kind of produce, by its id in the catalogue" },
  { name: "name", type: "text", meaning: "what it is called in the language asked for" },
] as const satisfies readonly Column[];

/** One row for each part and stay, in the plan's order. */
export const stayColumns = [
  ...shared,
  { name: "form", type: "word", words: ["whole", "cut"], meaning: "whole, or cut" },
  { name: "grams", type: "number", unit: "g", meaning: "mass of the part as bought" },
  {
    name: "action",
    type: "word",
    words: ["keep", "throw away"],
    meaning: "what to do with it; what is past its safe day is thrown away, and has one row without a place",
  },
  { name: "stay", type: "whole number", meaning: "which stay of the part it is, from 1" },
  { name: "place", type: "text", empty: "thrown away", meaning: "place of the kitchen, by its id" },
  { name: "place_name", type: "text", empty: "thrown away", meaning: "the same by its name" },
  {
    name: "place_kind",
    type: "text",
    empty: "thrown away",
    meaning: "sort of place, as in plan.schema.json",
  },
  { name: "wrap", type: "text", empty: "thrown away", meaning: "wrap, as in plan.schema.json" },
  { name: "from", type: "day", empty: "thrown away", meaning: "day it is put there" },
  {
    name: "to",
    type: "day",
    empty: "thrown away, or the plan does not say",
    meaning: "day it goes on; of the last stay the day after the last meal, or after the plan",
  },
  {
    name: "moves_when",
    type: "word",
    words: ["ripe", "day"],
    empty: "it stays",
    meaning: "whether it goes on when it is ripe or on the day",
  },
  { name: "ready_on", type: "day", empty: "it does not get ripe", meaning: "day it is ready to eat" },
  {
    name: "eat_by",
    type: "day",
    empty: "thrown away",
    meaning:
      "day by which to eat it: the last safe day where there is one, else the last day on which nine in ten are still good, never before it is ready",
  },
  {
    name: "eat_by_because",
    type: "word",
    words: ["quality", "for safety", "at once", "throw away"],
    meaning: "what says so; “at once”: within hours of the first day; “throw away”: it may not be eaten",
  },
  {
    name: "cut_on",
    type: "day",
    empty: "no whole piece of it is eaten over several days under a limit",
    meaning: "day the first such piece is begun, and so cut",
  },
  {
    name: "cut_eat_by",
    type: "day",
    empty: "as cut_on",
    meaning: "last safe day of that piece; what is left of it then is thrown away",
  },
  {
    name: "ends_by",
    type: "text",
    meaning: "what ends its life, as in plan.schema.json",
  },
  {
    name: "left_portions",
    type: "whole number",
    unit: "portions",
    meaning: "portions of the part that are left after the plan",
  },
] as const satisfies readonly Column[];

/** One row for each meal of each part, in order of date. */
export const mealColumns = [
  ...shared,
  { name: "date", type: "day", meaning: "day it is eaten" },
  { name: "day", type: "whole number", unit: "d", meaning: "the same counted from the first day, 0" },
  { name: "portions", type: "whole number", unit: "portions", meaning: "portions eaten" },
  { name: "grams", type: "number", unit: "g", meaning: "mass eaten" },
  {
    name: "chance_past_best",
    type: "number",
    unit: "1",
    empty: "the plan does not say",
    meaning: "chance of being past its best by then, 0 to 1",
  },
  {
    name: "quality",
    type: "number",
    unit: "1",
    empty: "the plan does not say",
    meaning: "quality where it is not, 0 to 1",
  },
] as const satisfies readonly Column[];

/** The tables by name. */
export const rowTables = { stays: stayColumns, meals: mealColumns } as const;
export type RowTable = keyof typeof rowTables;
