export {
  type CalendarEvent,
  calendarEvents,
  type EventSort,
  madeMoves,
} from "./calendar/calendarEvents.js";
export {
  type CalendarMaking,
  calendarText,
  earlierFromEvents,
  revisionAt,
} from "./calendar/calendarText.js";
export { calendarUid, eventUid, type Succession } from "./calendar/calendarUid.js";
export { CalendarError, type EarlierCalendar, earlierCalendar } from "./calendar/earlierCalendar.js";
export type { Reminder } from "./calendar/reminder.js";
export { type GoodUntil, goodUntil } from "./goodUntil.js";
export { labelLayout, type PlacedLabel, type PlacedLine } from "./labels/labelLayout.js";
export { labelDrawing, labelPage } from "./labels/labelPage.js";
export { type LabelRow, labelRows } from "./labels/labelRows.js";
export {
  type LabelSheet,
  labelPosition,
  type SheetFault,
  sheetFaults,
  type UsualSheet,
  usualSheets,
} from "./labels/labelSheet.js";
export { isMeasured, type Measure, textWidth } from "./labels/textWidth.js";
export { type LyingLots, lyingLots } from "./lyingLots.js";
export {
  type Column,
  type ColumnType,
  mealColumns,
  type RowTable,
  rowTables,
  stayColumns,
} from "./rows/columns.js";
export { csvText, textOfCell } from "./rows/csv.js";
export { type Cell, type MealRow, type PlanRows, planRows, type StayRow } from "./rows/planRows.js";
export { writtenCalendar, writtenLabels } from "./written.js";
