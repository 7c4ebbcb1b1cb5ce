/** Things to take from the page: a sheet for the door, labels, a calendar. */
export const paperEnglish = {
  "paper.heading": "To print and to take along",
  "paper.close": "Close",
  "paper.sheet": "A sheet for the refrigerator door",
  "paper.sheetAbout": "Where each thing goes, what to eat first, what to move. To be printed, a PDF.",
  "paper.size": "Paper",
  "paper.size.a4": "A4",
  "paper.size.letter": "US Letter",
  "paper.large": "Large print, on as many pages as it takes",
  "paper.makeSheet": "Save the sheet",
  "paper.labels": "Labels for bags and boxes",
  "paper.labelsAbout":
    "What it is, until when it is good, where it goes. Print at true size (100 %). Measure your label sheet first.",
  "paper.grid": "Label sheet",
  "paper.gridName": "{page}, {columns} across and {rows} down, labels of {width} × {height} mm",
  "paper.start": "First free label",
  "paper.outlines": "Draw the edges, to try on plain paper",
  "paper.makeLabels": "Save the labels",
  "paper.calendar": "The days for your calendar",
  "paper.calendarAbout":
    "What to eat, move and throw away on which day. A file that calendar programs open (iCalendar).",
  "paper.remind": "Reminder",
  "paper.remind.none": "None",
  "paper.remind.same": "On the day at 8:00",
  "paper.remind.before": "The evening before at 18:00",
  "paper.makeCalendar": "Save the days",
  "paper.print": "Print this plan as it is on the screen",
  "paper.working": "Setting the page …",
  "paper.first":
    "The first time, what it is set with has to come from the network ({size} MB). After that it is on this device.",
  "paper.saved": "{count, plural, one {Saved: {name} (# page).} other {Saved: {name} (# pages).}}",
  "paper.savedDays": "Saved: {name}.",
  "paper.unreachable":
    "What pages are set with is not on this device yet, and there is no network. Connect to it once ({size} MB) and try again, or print with your browser.",
  "paper.unprintable":
    "There are no letters to print {characters}. Name the kitchen and its places in Latin or Cyrillic letters.",
  "paper.wrong": "The page could not be set: {problem}",
  "paper.saveDocument": "Save as PDF: {title}",
  "paper.file.sheet": "door-sheet-{date}.pdf",
  "paper.file.labels": "labels-{date}.pdf",
  "paper.file.calendar": "days-{date}.ics",
} as const;
