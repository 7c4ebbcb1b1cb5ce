import type { CalendarDate } from "@keepwright/quantities";

/**
 * The plans that follow one another, each carried on from or made again in place of the one before: their calendars update each other. `began` is the first day of
 * the first of them; `name` keeps apart the calendars of two households that begin on the same day.
 */
export interface Succession {
  readonly began: CalendarDate;
  readonly name: string;
}

const offset = 0x6c62272e07bb014262b821756295c58dn;
const prime = 0x1000000000000000000013bn;

/** 128 bits that depend on every character: FNV-1a (Fowler, Noll and Vo, public domain; constants from memory). */
function hashOf(text: string): bigint {
  let hash = offset;
  for (let index = 0; index < text.length; index++) {
    hash = BigInt.asUintN(128, (hash ^ BigInt(text.charCodeAt(index))) * prime);
  }
  return hash;
}

/** The same UUID for the same key, in the form for hashes of one's own (version 8 of RFC 9562). It tells nobody's name or machine, as RFC 7986 asks. */
export function uuidOf(key: readonly (string | number)[]): string {
  const hex = hashOf(JSON.stringify(key)).toString(16).padStart(32, "0");
  const variant = ((Number.parseInt(hex.charAt(16), 16) & 3) | 8).toString(16);
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    `${variant}${hex.slice(17, 20)}`,
    hex.slice(20),
  ].join("-");
}

/** Identity of a calendar as a whole. */
export const calendarUid = ({ began, name }: Succession): string => uuidOf([began, name]);

/** Identity of one event of it: the same in every plan of the succession that still has it. */
export const eventUid = ({ began, name }: Succession, ...key: readonly (string | number)[]): string =>
  uuidOf([began, name, ...key]);
