// Writes docs/accuracy.md and its drawing from what the tests recorded under test-artefacts; --check fails when one is stale.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { chancesDrawing, chancesSection, drawingFile } from "./accuracy/chances.mjs";
import { root } from "./lib/run.mjs";

const folder = `${root}/test-artefacts/accuracy`;
const page = `${root}/docs/accuracy.md`;
const remarks = `${root}/docs/accuracy-remarks.md`;

const calibrationFile = `${root}/test-artefacts/calibration/lives.json`;
const relativesFile = `${root}/test-artefacts/relatives/relatives.json`;
const chancesFile = `${root}/test-artefacts/draws/chances.json`;
const practiceFile = `${root}/test-artefacts/practice/commonPractice.json`;

const readAll = () =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .sort()
    .flatMap((name) => JSON.parse(readFileSync(`${folder}/${name}`, "utf8")));

const figure = (value) =>
  value === Number.POSITIVE_INFINITY ? "∞" : Number(Number(value).toPrecision(3)).toString();
const cell = (text) => String(text).replaceAll("|", "\\|").replaceAll("\n", " ");
/** Median of factors, the geometric mean of the two in the middle of an even number; NaN of none. */
const median = (values) => {
  const sorted = [...values].sort((one, other) => one - other);
  const half = (sorted.length - 1) / 2;
  return sorted.length === 0 ? Number.NaN : Math.sqrt(sorted[Math.floor(half)] * sorted[Math.ceil(half)]);
};

/** The published figure, range ("14–42") or bound ("≥ 21"). */
function published({ publishedLow: low, publishedHigh: high }) {
  if (high === undefined) return `≥ ${figure(low)}`;
  if (low === undefined) return `≤ ${figure(high)}`;
  return low === high ? figure(low) : `${figure(low)}–${figure(high)}`;
}

const isCheck = (each) => each.use === "check";
const isKept = (each) => each.ratio === 1;
/** A ratio of the model to a publication; where it expects never what was published with days, there is none. */
const ratioOf = (each, ratio) => (each.never && each.ratio !== 1 ? Number.POSITIVE_INFINITY : ratio);
const factorOf = (ratio) => Math.max(ratio, 1 / ratio);
const medianFactor = (ratios) => (ratios.length === 0 ? "" : figure(median(ratios.map(factorOf))));
const percentOf = (part, whole) => (whole === 0 ? "none" : `${part} (${Math.round((100 * part) / whole)} %)`);

/** Counts of one room: checks with a figure and bounds apart, then what is no check. */
function counts(rows) {
  const checks = rows.filter((each) => isCheck(each) && !each.bound);
  const ranges = checks.filter((each) => each.publishedLow < each.publishedHigh);
  const bounds = rows.filter((each) => isCheck(each) && each.bound);
  return {
    checks: checks.length,
    within: checks.filter((each) => each.within).length,
    factor: medianFactor(checks.map((each) => ratioOf(each, each.ratio))),
    ranges: ranges.length,
    toMiddle: medianFactor(ranges.map((each) => ratioOf(each, each.ratioToMiddle))),
    bounds: bounds.length,
    kept: bounds.filter(isKept).length,
    fitted: rows.filter((each) => each.use === "fit").length,
    fittedWithin: rows.filter((each) => each.use === "fit" && each.within).length,
    shown: rows.filter((each) => each.use === "shown").length,
    shownWithin: rows.filter((each) => each.use === "shown" && each.within).length,
  };
}

function verdict(each) {
  if (each.use === "shown") return "shown";
  if (each.use === "fit") return each.within ? "fitted" : "fitted, yet off";
  if (!each.bound) return each.within ? "within" : "MISFIT";
  if (isKept(each)) return "bound kept";
  return each.within ? "bound missed, within tolerance" : "bound MISSED";
}

function row(each) {
  const source = `${each.source}${each.fromMemory ? " (from memory)" : ""}`;
  const cells = [
    each.what,
    each.never ? "never" : figure(each.model),
    published(each),
    each.unit,
    figure(ratioOf(each, each.ratio)),
    `×${each.tolerance}`,
  ];
  return `| ${[...cells, verdict(each), source, each.note ?? ""].map(cell).join(" | ")} |`;
}

function told(rows) {
  const room = counts(rows);
  const middle =
    room.ranges === 0 ? "" : `, by ${room.toMiddle} from the middle of ranges (${room.ranges} of them)`;
  const sentences = [
    room.checks > 0 &&
      `${room.within} of ${room.checks} checks with a figure are within their tolerance; the median is off by a factor of ${room.factor} from the nearest published end${middle}.`,
    room.bounds > 0 && `${room.kept} of ${room.bounds} bounds are kept.`,
    room.checks + room.bounds === 0 && "No independent check.",
    room.fitted > 0 &&
      `Given to the model: ${room.fitted}, of which ${room.fittedWithin} come out within their tolerance.`,
    room.shown > 0 && `Only shown: ${room.shown}, of which ${room.shownWithin} lie within their tolerance.`,
  ];
  return sentences.filter(Boolean).join(" ");
}

function section(room, all) {
  const head =
    "| what | model | published | unit | ratio | tolerance | verdict | source | remark |\n|---|---|---|---|---|---|---|---|---|";
  return `## ${room[0].toUpperCase()}${room.slice(1)}\n\n${told(all)}\n\n${head}\n${all.map(row).join("\n")}\n`;
}

function practiceSection() {
  const rows = JSON.parse(readFileSync(practiceFile, "utf8"));
  const always = rows.filter((each) => each.followed === each.of).length;
  const head = "| advice | plans that follow it | comes of | if not all, why |\n|---|---|---|---|";
  const lines = rows.map(
    (each) =>
      `| ${cell(each.name)} | ${each.followed} of ${each.of} | ${each.declared ? "a declared rule" : "the simulation"} | ${cell(each.why)} |`,
  );
  return (
    `## Common practice, no source\n\nPlans of an invented ordinary haul for two to five people, in the ordinary kitchen and in one with a cellar (packages/planner/test/commonPractice). ` +
    `No list of pairs that must lie apart is coded but Handbook 66’s table of smells; declared rules cover only what the physics cannot know ` +
    `(covers for cut produce, what must breathe, damp towels, dairy: packages/planner/src/rules). Of ${rows.length} pieces of advice ${always} are followed by every plan. Where they are not, neither the model nor the advice was bent.\n\n${head}\n${lines.join("\n")}\n`
  );
}

const share = ({ inside, of }) => `${inside} of ${of} (${Math.round((100 * inside) / of)} %)`;

function calibrationSection() {
  const rows = JSON.parse(readFileSync(calibrationFile, "utf8"));
  const head =
    "| published lives | inside the model’s 80 % range | aim | verdict | of |\n|---|---|---|---|---|";
  const lines = rows.map(
    (each) =>
      `| ${cell(each.name)} | ${share(each)} | ${Math.round(100 * each.aim)} % | ${each.use === "fit" ? "fitted" : "check"} | ${cell(each.remark)} |`,
  );
  return (
    "## Uncertainty\n\nEvery life is told as a range meant to hold 80 % of cases. Two parts of its spread (what publications disagree on; the model’s own error, growing as it carries a life away from the " +
    "published one) were fitted on one half of the kinds; the other half checks them. Where the parts come from: [uncertainty](model/uncertainty.md).\n\n" +
    `${head}\n${lines.join("\n")}\n`
  );
}

function relativesSection() {
  const rows = JSON.parse(readFileSync(relativesFile, "utf8"));
  const head =
    "| quantity | published figures left out in turn | inside the rule’s 80 % range | median error |\n|---|---|---|---|";
  const lines = rows.map((each) => {
    const error =
      each.scale === "factor" ? `a factor of ${figure(each.medianError)}` : figure(each.medianError);
    return `| ${cell(each.quantity)} | ${each.tried} | ${Math.round(100 * each.inside)} % | ${error} |`;
  });
  return (
    "## Inferred from relatives\n\nWhat a kind’s file leaves out is inferred from its nearest relatives ([rule](model/relatives.md)). Each published figure was left out in turn and the rule asked; all of it is check.\n\n" +
    `${head}\n${lines.join("\n")}\n`
  );
}

function summary(rooms, all) {
  const head =
    "| room | checks with a figure | within tolerance | off by a median factor of | the same to the middle of ranges (how many) | bounds | kept | fitted, no check | only shown |\n|---|---|---|---|---|---|---|---|---|";
  const lines = rooms.map((name) => {
    const room = counts(all.filter((each) => each.room === name));
    const middle = room.ranges === 0 ? "" : `${room.toMiddle} (${room.ranges})`;
    const kept = room.bounds === 0 ? "" : room.kept;
    const cells = [percentOf(room.within, room.checks), room.factor, middle, room.bounds, kept];
    return `| ${[name, room.checks, ...cells, room.fitted, room.shown].join(" | ")} |`;
  });
  return `## In short\n\n${head}\n${lines.join("\n")}\n`;
}

const intro = [
  "# How right it is\n",
  "Generated by `node scripts/write-accuracy.mjs` from the tests: model beside publication. A misfit is shown, not hidden: the tolerance stands where it stood.\n",
  "- **published** is what was published: a figure, a range (14–42) or a bound (≥ 21, ≤ 14). **ratio** is the model divided by the nearest published end: 1 inside a range and on the right side of a bound, ∞ where the model expects never what was published with days.",
  "- **check**: the catalogue was not given the figure, and nothing in it was inferred from it. **fitted**: it was; agreement says nothing. **shown**: neither, an illustration or one publication beside another.",
  "- Median factors are of the ratio to the nearest end, which flatters wide ranges. Beside them stands the median factor to the geometric middle, over the checks with two different ends.",
  "- A bound (“none in 21 days”, “at least”, a class open to one side) is easily kept and is counted apart. It is kept only on its right side; a miss inside the tolerance is called so.\n",
].join("\n");

function write(chances) {
  const all = readAll();
  const rooms = [...new Set(all.map((each) => each.room))].sort();
  const remarked = existsSync(remarks) ? `\n${readFileSync(remarks, "utf8").trim()}\n` : "";
  const sections = rooms.map((room) =>
    section(
      room,
      all.filter((each) => each.room === room),
    ),
  );
  const parts = [
    summary(rooms, all),
    ...sections,
    calibrationSection(),
    chancesSection(chances),
    relativesSection(),
    practiceSection(),
  ];
  return `${intro}${remarked}\n${parts.join("\n")}`;
}

const chances = JSON.parse(readFileSync(chancesFile, "utf8"));
const files = [
  [page, write(chances)],
  [`${root}/docs/${drawingFile}`, chancesDrawing(chances)],
];
const isStale = ([file, text]) => !existsSync(file) || readFileSync(file, "utf8") !== text;
if (!process.argv.includes("--check")) {
  for (const [file, text] of files) writeFileSync(file, text);
  console.log(`Wrote docs/accuracy.md and docs/${drawingFile}.`);
} else if (files.some(isStale)) {
  const names = files.filter(isStale).map(([file]) => file.slice(root.length + 1));
  console.error(`Stale: ${names.join(", ")}. Run: npx vitest run && node scripts/write-accuracy.mjs`);
  process.exitCode = 1;
} else {
  console.log(`docs/accuracy.md and docs/${drawingFile} are up to date.`);
}
