const list = (text: string): readonly string[] => text.split(" ");

const weekdays = [
  ...list(
    "monday tuesday wednesday thursday friday saturday sunday mon tue tues wed weds thu thur thurs fri sat sun",
  ),
  ...list("lunes martes miercoles jueves viernes sabado domingo lun mie jue vie sab dom"),
];
const months = [
  ...list("january february march april may june july august september october november december"),
  ...list("jan feb mar apr jun jul aug sep sept oct nov dec"),
  ...list(
    "enero febrero marzo abril mayo junio julio agosto septiembre setiembre octubre noviembre diciembre",
  ),
  ...list("ene abr ago dic"),
];
const spans = list("h hs hr hrs d ds dy dys w wk wks wks yr yrs min mins sem mes meses ages aged age");

/** Words that name a day, a month or a length of time, or that say something is old: beside what is cut they may tell how long ago. */
export const dateWords: ReadonlySet<string> = new Set([
  ...weekdays,
  ...weekdays.map((day) => `${day}s`),
  ...months,
  ...spans,
  ...list("old older oldish stale viejo vieja viejos viejas viejito viejita anejo"),
]);
