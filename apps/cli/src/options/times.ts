import type { Reminder } from "@keepwright/handout";
import { quoted, userError } from "../userError.js";

/** A time of day on the wall clock, 00:00 to 23:59. Throws UserError naming the option. */
export function timeOption(option: string, day: Reminder["day"]): (text: string) => Reminder {
  return (text) => {
    const match = /^([01]?\d|2[0-3]):([0-5]\d)$/.exec(text.trim());
    if (!match)
      throw userError(option, quoted(text), "Write a time as hours and minutes, for example 08:00.");
    return { day, hour: Number(match[1]), minute: Number(match[2]) };
  };
}

const moment = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(Z|[+-]\d{2}:\d{2})$/;
/** Years in which a calendar can be made: its revisions are seconds from 2020 in 32 bits. */
const years = { first: 2020, last: 2087 };

/** A moment as in ISO 8601, in UTC to the second. Throws UserError naming the option. */
export function momentOption(option: string): (text: string) => string {
  return (text) => {
    const time = moment.test(text.trim()) ? new Date(text.trim()) : new Date(Number.NaN);
    const year = time.getUTCFullYear();
    if (!(year >= years.first && year <= years.last)) {
      const remedy = `Write a moment from ${years.first} to ${years.last}, for example 2026-06-13T08:00:00Z.`;
      throw userError(option, quoted(text), remedy);
    }
    return `${time.toISOString().slice(0, 19)}Z`;
  };
}
