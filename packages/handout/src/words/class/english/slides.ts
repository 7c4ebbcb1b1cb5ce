import type { Messages } from "../../message.js";

/** Slides, and the comparison of one haul laid two ways. */
export const slidesEnglish = {
  "slides.kinds": "{count, plural, one {# kind} other {# kinds}}, one kitchen, one week at home",
  "slides.sources": "Where this comes from",
  "slides.moreSources": "more in the notes",
  "slides.goesOn": "{title} ({number} of {of})",
  "slides.why": "Why",
  "slides.days": "Days until half of them are past their best, by place",
  "slides.daysShort": "Days",
  "slides.lives.alt": "Bar chart of days until half of them are past their best. {list}.",
  "slides.lives.one": "{place}: {days, plural, one {# day} other {# days}}",
  "slides.lives.sign": "† Lasts there, but it does not ripen there or is worse to eat.",
  "slides.open.notes":
    "Welcome everyone. Ask: who threw away fruit or vegetables this week, and what was it?",
  "slides.kind.notes":
    "Say where it goes, how it is wrapped and how long it lasts. Then ask who keeps it another way, and what came of it.",
  "slides.quiz.title": "Question {number}",
  "slides.quiz.notes": "Let everyone choose before you tell. Right is {letter}) {choice}",
  "slides.question": "Ask the group before you go on.",
  "slides.invented": "The home in this example is made up.",
  "slides.lost.title": "Lost by each evening",
  "slides.lost.axis": "Lost so far, {unit}",
  "slides.lost.alt":
    "Line chart of what is lost by each evening. {one}: {oneLost} in the end. {other}: {otherLost} in the end.",
  "slides.fate.title": "What became of it in the end",
  "slides.fate.axis": "Of what came home, {unit}",
  "slides.fate.alt":
    "Bars of what was eaten, lost and still good in the end. {one}: {oneLost} lost. {other}: {otherLost} lost.",
  "slides.fate.row": "{eaten}: {eatenWords}. {lost}: {lostWords}. {left}: {leftWords}.",
  "slides.things.title": "Where the difference lies",
  "slides.things.gone": "gone by evening {number}: {ending}",
  "slides.things.lost": "{words}; {lost} lost",
  "slides.things.none": "No one thing differs by much.",
  "slides.close.title": "To take home",
  "slides.close.notes":
    "Thank everyone. Give out the pages. Ask each to name one thing to do another way this week.",
  "slides.kilograms": "kg",
  "slides.pounds": "lb",
  "twoWaysPaper.evenings": "Evening by evening",
  "twoWaysPaper.evening": "Evening",
  "twoWaysPaper.of": "{side}: {fate}",
  "twoWaysPaper.how": "How this is worked out",
} as const satisfies Messages;
