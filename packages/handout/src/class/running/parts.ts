import type { DocumentSort } from "../classKit.js";
import type { ClassTopic } from "../classRequest.js";

export const partNames = [
  "welcome",
  "places",
  "cards",
  "apart",
  "ripening",
  "signs",
  "saving",
  "household",
  "myths",
  "buying",
  "safety",
  "quiz",
  "close",
] as const;
export type PartName = (typeof partNames)[number];

/** What a host may have to bring. */
export const bringNames = ["food", "pens", "scissors", "thermometer", "bags", "screen"] as const;
export type BringName = (typeof bringNames)[number];

/** A part of a class: how short and how long it may be, and how soon it is dropped. */
export interface ClassPart {
  readonly name: PartName;
  /** Shortest and longest that it is worth [min]. */
  readonly least: number;
  readonly most: number;
  /** 1 stays longest; the highest is dropped first where time is short. */
  readonly priority: number;
  /** Held where the class is about one of these; absent: always. */
  readonly topics?: readonly ClassTopic[];
  readonly papers: readonly DocumentSort[];
  readonly bring: readonly BringName[];
}

/** The parts in the order in which they are held. Minutes and priorities are declared preferences, no source: see the decision record. */
export const classParts: readonly ClassPart[] = [
  { name: "welcome", least: 1, most: 5, priority: 2, papers: [], bring: [] },
  {
    name: "places",
    least: 4,
    most: 15,
    priority: 4,
    papers: ["places", "answer"],
    bring: ["food"],
  },
  { name: "cards", least: 5, most: 20, priority: 5, papers: ["cards"], bring: ["scissors", "food"] },
  { name: "apart", least: 3, most: 10, priority: 7, topics: ["apart"], papers: ["answer"], bring: ["bags"] },
  {
    name: "ripening",
    least: 3,
    most: 10,
    priority: 11,
    topics: ["ripening"],
    papers: ["answer"],
    bring: ["food"],
  },
  { name: "signs", least: 3, most: 10, priority: 6, topics: ["signs"], papers: ["answer"], bring: ["food"] },
  { name: "saving", least: 3, most: 8, priority: 12, topics: ["saving"], papers: ["answer"], bring: [] },
  {
    name: "household",
    least: 5,
    most: 20,
    priority: 10,
    topics: ["places", "lasting"],
    papers: ["household", "comparison"],
    bring: ["screen"],
  },
  { name: "myths", least: 4, most: 15, priority: 8, topics: ["myths"], papers: ["myths"], bring: [] },
  {
    name: "buying",
    least: 8,
    most: 25,
    priority: 13,
    topics: ["buying"],
    papers: ["exercise", "exercise answer"],
    bring: ["pens"],
  },
  { name: "safety", least: 2, most: 6, priority: 1, papers: ["answer"], bring: ["thermometer"] },
  { name: "quiz", least: 4, most: 10, priority: 9, papers: ["quiz", "quiz answers"], bring: ["pens"] },
  { name: "close", least: 2, most: 10, priority: 3, papers: [], bring: [] },
];
