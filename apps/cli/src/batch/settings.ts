import type { UnitSystem } from "@keepwright/handout";
import type { PaperSize } from "@keepwright/paper";
import type { Kitchen } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import type { AskedLanguage } from "../options/language.js";

/** What holds for every row that says nothing else. Plain data: it goes to the workers. */
export interface BatchSettings {
  readonly kitchen: Kitchen;
  readonly people?: number;
  readonly portions?: number;
  readonly days: number;
  readonly from: CalendarDate;
  readonly seed: number;
  readonly units: UnitSystem;
  readonly language: AskedLanguage;
  readonly paper?: PaperSize;
  readonly large: boolean;
}
