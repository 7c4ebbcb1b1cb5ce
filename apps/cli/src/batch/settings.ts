import type { LanguageName, UnitSystem } from "@keepwright/handout";
import type { PaperSize } from "@keepwright/paper";
import type { Kitchen } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";

/** What holds for every row that says nothing else. Plain data: it goes to the workers. */
export interface BatchSettings {
  readonly kitchen: Kitchen;
  readonly people?: number;
  readonly portions?: number;
  readonly days: number;
  readonly from: CalendarDate;
  readonly seed: number;
  readonly units: UnitSystem;
  readonly language: LanguageName;
  readonly paper?: PaperSize;
  readonly large: boolean;
}
