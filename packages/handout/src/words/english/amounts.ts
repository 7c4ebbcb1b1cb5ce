import type { Messages } from "../message.js";

/** Amounts and spans of time. */
export const amountsWords = {
  // Amounts
  "amount.pieces": "{pieces} (about {mass})",
  "amount.mass": "about {mass}",
  "amount.quarts": "{value} qt",
  "amount.litres": "{value} L",
  "amount.ethylene": "{value} µL/L",
  "amount.ethylene.little": "less than {value} µL/L",

  // Spans of time, never finer than the biology allows
  "span.none": "less than a day",
  "span.hours": "two hours at most",
  "span.past": "no time left",
  "span.days.one": "about a day",
  "span.days.upTo": "{count, plural, one {up to # day} other {up to # days}}",
  "span.days.about": "about {days} days",
  "span.days": "{low} to {high} days",
  "span.daysToWeeks": "{count, plural, one {{low} days to a week} other {{low} days to # weeks}}",
  "span.dayToWeeks": "{count, plural, one {a day to a week} other {a day to # weeks}}",
  "span.weeks.about": "about {weeks} weeks",
  "span.weeks": "{low} to {high} weeks",
  "span.daysToMonths": "{low} days to {high} months",
  "span.weeksToMonths": "{count, plural, one {a week to {high} months} other {# weeks to {high} months}}",
  "span.months.about": "about {months} months",
  "span.months": "{low} to {high} months",
  "span.overYear": "more than a year",
  "span.monthsToOverYear":
    "{count, plural, one {a month to more than a year} other {# months to more than a year}}",
} as const satisfies Messages;
