import type { Messages } from "../message.js";

/** Cantidades y tiempos. */
export const amountsSpanish = {
  "amount.pieces": "{pieces} (cerca de {mass})",
  "amount.mass": "cerca de {mass}",
  "amount.quarts": "{value} qt",
  "amount.litres": "{value} L",
  "amount.ethylene": "{value} µL/L",
  "amount.ethylene.little": "menos de {value} µL/L",

  "span.none": "menos de un día",
  "span.hours": "dos horas como máximo",
  "span.past": "ya no dura",
  "span.days.one": "cerca de un día",
  "span.days.upTo": "{count, plural, one {hasta # día} other {hasta # días}}",
  "span.days.about": "cerca de {days} días",
  "span.days": "de {low} a {high} días",
  "span.daysToWeeks": "{count, plural, one {de {low} días a una semana} other {de {low} días a # semanas}}",
  "span.dayToWeeks": "{count, plural, one {de un día a una semana} other {de un día a # semanas}}",
  "span.weeks.about": "cerca de {weeks} semanas",
  "span.weeks": "de {low} a {high} semanas",
  "span.daysToMonths": "de {low} días a {high} meses",
  "span.weeksToMonths":
    "{count, plural, one {de una semana a {high} meses} other {de # semanas a {high} meses}}",
  "span.months.about": "cerca de {months} meses",
  "span.months": "de {low} a {high} meses",
  "span.overYear": "más de un año",
  "span.monthsToOverYear":
    "{count, plural, one {de un mes a más de un año} other {de # meses a más de un año}}",
} as const satisfies Messages;
