import { parse } from "csv-parse/sync";
import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { run } from "../../src/run.js";
import { fakeDoor } from "../support/fakeDoor.js";

function tried(words: readonly string[], files: Record<string, string> = {}, input = "") {
  const door = fakeDoor({ files, input: new TextEncoder().encode(input) });
  return { code: run(words, door), ...door.printed };
}

const haul = "8 apples, 2 avocados, 300 g kale, 1 kg potatoes";
const household = ["--from", "2026-06-13", "--days", "6", "--portions", "2"];
const plan = tried(["plan", haul, ...household, "--json", "--why"]).out;
const next = tried(
  [
    "carry-on",
    "plan.json",
    "--on",
    "2026-06-15",
    "--happened",
    "threw out the kale; threw out the avocados",
    "--json",
  ],
  { "plan.json": plan },
).out;
const files = { "plan.json": plan, "next.json": next };
const eventsOf = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((one) => new ICAL.Event(one));

describe.each([
  ["calendar", ["--made", "2026-06-13T08:00:00Z"]],
  ["labels", ["--grid", "a4-2x4-105x74"]],
  ["rows", ["--table", "meals"]],
] as const)("keepwright %s", (command, more) => {
  it("makes the same of a haul, of its plan in a file, and of the plan piped in", () => {
    const ofHaul = tried([command, haul, ...household, ...more]);
    const ofPlan = tried([command, "plan.json", ...more], files);
    const piped = tried([command, "-", ...more], {}, plan);
    expect([ofHaul.code, ofPlan.code, piped.code]).toEqual([0, 0, 0]);
    expect(ofPlan.out).toBe(ofHaul.out);
    expect(piped.out).toBe(ofHaul.out);
    expect(ofPlan.err).toBe("Plan read from the file “plan.json”.\n");
    expect(tried([command, "next.json", ...more], files).code).toBe(0);
  });

  it("ends with 3 and asks about what was not understood", () => {
    const { code, err } = tried([command, "2 kg apples, 3 zorbulons", "--days", "3"]);
    expect(code).toBe(3);
    expect(err).toMatch(/zorbulons/);
  });

  it.each<[string, string[], Record<string, string>, RegExp]>([
    ["nothing", [], {}, /missing required argument/],
    ["a file that is missing", ["plan.json"], {}, /no such file/],
    ["spoilt JSON", ["p.json"], { "p.json": "{" }, /plan in the file “p\.json”: not valid JSON.*plan --json/],
    ["no plan", ["p.json"], { "p.json": `{"a": 1}` }, /the haul it was made for is not in it/],
    [
      "a plan with a day that is none",
      ["p.json"],
      { "p.json": plan.replace(`"from": "2026-06-13"`, `"from": "2026-13-45"`) },
      /plan from: "2026-13-45"\. Write a day of the calendar/,
    ],
    [
      "a plan with a stay on no day",
      ["p.json"],
      { "p.json": plan.replace(/("wrap": "[^"]*",\s*"from": ")2026-06-13/, "$12026-02-30") },
      /"2026-02-30" is no day of the calendar/,
    ],
    [
      "a plan of too many days",
      ["p.json"],
      { "p.json": plan.replace(`"days": 6`, `"days": 600000000`) },
      /plan days: 600000000/,
    ],
    ["an option that is for a haul", ["plan.json", "--people", "3"], files, /--people: it is for a haul/],
  ])("ends with 2 and says what would work: %s", (_, words, given, message) => {
    const { code, err } = tried([command, ...words], given);
    expect(err).toMatch(message);
    expect(code).toBe(2);
    const json = tried([command, ...words, "--json"], given);
    expect(JSON.parse(json.out)).toMatchObject({ error: { exitCode: 2 } });
  });
});

describe("keepwright calendar", () => {
  it("cancels what fell away since the calendar or the plan before", () => {
    const first = tried(["calendar", "plan.json"], files).out;
    const withFirst = { ...files, "plan.ics": first };
    for (const earlier of ["plan.ics", "plan.json"]) {
      const { code, out } = tried(["calendar", "next.json", "--earlier", earlier], withFirst);
      expect(code).toBe(0);
      const gone = eventsOf(out).filter(
        (one) => one.component.getFirstPropertyValue("status") === "CANCELLED",
      );
      expect(gone.map(({ summary }) => summary).join()).toMatch(/No longer: .*avocados/);
      const json = JSON.parse(
        tried(["calendar", "next.json", "--earlier", earlier, "--json"], withFirst).out,
      );
      expect(json.cancelled).toEqual(gone.map(({ uid }) => uid));
    }
  });

  it("is made at the moment of the machine's clock, or the one given", () => {
    expect(tried(["calendar", "plan.json"], files).out).toContain("DTSTAMP:20260613T080000Z");
    const given = tried(["calendar", "plan.json", "--made", "2026-06-14T01:30:00+02:00"], files).out;
    expect(given).toContain("DTSTAMP:20260613T233000Z");
  });

  it("rings when asked to, and bears a name when given one", () => {
    const words = ["--remind", "8:05", "--remind-day-before", "18:00", "--name", "Blue house"];
    const { out } = tried(["calendar", "plan.json", ...words], files);
    expect(out).toContain("TRIGGER:PT8H5M\r\n");
    expect(out).toContain("TRIGGER:-PT6H\r\n");
    expect(out).toContain("NAME:Blue house\r\n");
  });

  it.each<[string[], RegExp]>([
    [["--remind", "8"], /--remind: “8”\. Write a time/],
    [["--remind-day-before", "24:00"], /--remind-day-before: “24:00”/],
    [["--made", "yesterday"], /--made: “yesterday”.*2026-06-13T08:00:00Z/],
    [["--made", "1990-01-01T00:00:00Z"], /from 2020 to 2087/],
    [["--name", " "], /--name/],
    [["--earlier", "gone.ics"], /no such file/],
    [["--earlier", "other.ics"], /another program wrote it/],
    [["--earlier", "half.ics"], /not a whole calendar/],
    [["--earlier", "june.json"], /of other plans than this one, which began on 2026-06-13/],
  ])("refuses %j", (words, message) => {
    const june = tried(["plan", haul, "--from", "2026-06-01", "--days", "3", "--json"]).out;
    const other = "BEGIN:VCALENDAR\r\nPRODID:x\r\nUID:y\r\nEND:VCALENDAR\r\n";
    const given = { ...files, "june.json": june, "other.ics": other, "half.ics": "BEGIN:VCALENDAR" };
    const { code, err } = tried(["calendar", "plan.json", ...words], given);
    expect(err).toMatch(message);
    expect(code).toBe(2);
  });
});

describe("keepwright labels", () => {
  it("takes a sheet of one's own, from a chosen label on", () => {
    const words = ["--grid", "210x297 2x5 90x50 15x20 0x2,5", "--start", "3", "--json"];
    const { sheet, labels } = JSON.parse(tried(["labels", "plan.json", ...words], files).out);
    expect(sheet).toMatchObject({ columns: 2, rows: 5, gapDown: 2.5 });
    expect(labels[0]).toMatchObject({ row: 1, column: 0, x: 15, y: 72.5 });
  });

  it("writes them as PDF where a file is named, and tells so; JSON then has the lines where the PDF has them", () => {
    const door = fakeDoor({ files });
    expect(run(["labels", "plan.json", "--out", "l.pdf"], door)).toBe(0);
    expect(door.printed.out).toBe("Written: l.pdf (1 page).\n");
    expect(new TextDecoder("latin1").decode(door.written["l.pdf"]!.subarray(0, 5))).toBe("%PDF-");
    const spoken = fakeDoor({ files });
    run(["labels", "plan.json", "--out", "l.pdf", "--language", "es", "--json"], spoken);
    const { labels } = JSON.parse(spoken.printed.out);
    const html = JSON.parse(tried(["labels", "plan.json", "--language", "es", "--json"], files).out);
    expect(labels.map(({ name }: { name: string }) => name)).toEqual(
      html.labels.map(({ name }: { name: string }) => name),
    );
    expect(labels[0].lines[0].width).not.toBe(html.labels[0].lines[0].width);
  });

  it("writes over no file that is no PDF, and names what it has no letters for", () => {
    const kitchen = JSON.parse(tried(["kitchen", "ordinary", "--json"]).out);
    const places = kitchen.places.map((place: object, index: number) => ({
      ...place,
      name: `冰箱 ${index}`,
    }));
    const given = { "k.json": JSON.stringify({ ...kitchen, places }), "l.pdf": "mine" };
    expect(tried(["labels", haul, ...household, "--out", "l.pdf"], given)).toMatchObject({ code: 2 });
    const { code, err } = tried(["labels", haul, ...household, "--out", "new.pdf", "-k", "k.json"], given);
    expect(err).toMatch(/labels: there are no letters to print “冰”, “箱”\. Name the kitchen/);
    expect(code).toBe(2);
  });

  it.each<[string[], RegExp]>([
    [["--grid", "big"], /--grid: “big”\. Give one of a4-/],
    [["--grid", "210x297 3x7 70x38.1 7x15 2x0"], /label sheet width: .*221 mm of 210 mm/],
    [["--grid", "210x297 3x7 7x7 7x15 2x0"], /at least 25 by 12 mm/],
    [["--start", "22"], /--start: 22\. The sheet has 21 labels/],
    [["--start", "0"], /--start/],
  ])("refuses %j", (words, message) => {
    const { code, err } = tried(["labels", "plan.json", ...words], files);
    expect(err).toMatch(message);
    expect(code).toBe(2);
  });
});

describe("keepwright rows", () => {
  it("prints what is typed as a formula as text", () => {
    const kitchen = JSON.parse(tried(["kitchen", "ordinary", "--json"]).out);
    const places = kitchen.places.map((place: object, index: number) => ({ ...place, name: `=${index}+1` }));
    const given = { "k.json": JSON.stringify({ ...kitchen, places }) };
    const { out } = tried(["rows", haul, ...household, "--csv", "-k", "k.json"], given);
    const lines = parse(out, { columns: true, record_delimiter: "\r\n" }) as { place_name: string }[];
    expect(lines.length).toBeGreaterThan(3);
    for (const { place_name } of lines) expect(place_name).toMatch(/^'=\d\+1$/);
  });

  it.each<[string[], RegExp]>([
    [["--table", "lots"], /--table: “lots”\. Give one of: stays, meals/],
    [["--csv", "--json"], /--csv: --json is given too/],
    [["--json", "--table", "meals"], /JSON has both/],
  ])("refuses %j", (words, message) => {
    const { code, err, out } = tried(["rows", "plan.json", ...words], files);
    expect(`${err}${out}`).toMatch(message);
    expect(code).toBe(2);
  });
});
