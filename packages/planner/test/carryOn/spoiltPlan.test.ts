import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/problem/inputError.js";
import { lot, request, smallKitchen } from "../support.js";
import { again, begin, later } from "./support.js";

const first = begin(
  request(
    [lot("apple", 600, { pieces: 4 }), lot("salad-leaves", 200, { form: "cut", id: "salad" })],
    smallKitchen(),
    {
      people: 1,
      portionsPerPersonPerDay: 1,
      days: 4,
    },
  ),
);
/** Carried on once, so that its haul brings states and clocks along. */
const begun = again(first, later(first, 1, { lots: [{ lot: "salad", eaten: "none" }] }));

type Json = Record<string, unknown> | unknown[];
const isJson = (value: unknown): value is Json => typeof value === "object" && value !== null;

/** All fields of a value, each as the thing it is in and its name there. */
function fieldsOf(value: unknown): { of: Json; name: string }[] {
  if (!isJson(value)) return [];
  return Object.keys(value).flatMap((name) => [
    { of: value, name },
    ...fieldsOf((value as Record<string, unknown>)[name]),
  ]);
}

const spoilt = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    "",
    "x",
    -1,
    0,
    1,
    2,
    7,
    1e9,
    -0.5,
    true,
    [],
    {},
    "2026-99-99",
    "none",
    "shelf",
    "ripe",
  ),
  fc.anything(),
);

describe("a plan or a haul with something spoilt in it", () => {
  it.each(["plan", "haul"] as const)(
    "is carried on or refused with what is wrong, never a fault: %s",
    (which) => {
      fc.assert(
        fc.property(fc.nat(), spoilt, (at, value) => {
          const given = structuredClone({ plan: begun.plan, haul: begun.request.haul });
          const fields = fieldsOf(given[which]);
          const { of, name } = fields[at % fields.length]!;
          (of as Record<string, unknown>)[name] = value;
          try {
            later(begun, 1, {}, given);
          } catch (error) {
            expect(error, `${name}: ${String(error)}`).toBeInstanceOf(InputError);
          }
        }),
        { numRuns: 250, seed: 8, endOnFailure: true },
      );
    },
  );
});
