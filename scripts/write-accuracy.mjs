// Writes docs/accuracy.md from what the tests recorded under test-artefacts/accuracy; --check fails when the page is stale.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { root } from "./lib/run.mjs";

const folder = `${root}/test-artefacts/accuracy`;
const page = `${root}/docs/accuracy.md`;
const remarks = `${root}/docs/accuracy-remarks.md`;

const calibrationFile = `${root}/test-artefacts/calibration/lives.json`;
const relativesFile = `${root}/test-artefacts/relatives/relatives.json`;
const practiceFile = `${root}/test-artefacts/practice/commonPractice.json`;

const readAll = () =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .sort()
    .flatMap((name) => JSON.parse(readFileSync(`${folder}/${name}`, "utf8")));

const figure = (value) => Number(Number(value).toPrecision(3)).toString();
const cell = (text) => String(text).replaceAll("|", "\\|").replaceAll("\n", " ");
const median = (values) => {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted.length === 0 ? Number.NaN : sorted[Math.floor((sorted.length - 1) / 2)];
};

function row(each) {
  const fitted = each.within ? "fitted" : "fitted, yet off";
  const verdict = each.use === "fit" ? fitted : each.within ? "within" : "MISFIT";
  const source = `${each.source}${each.fromMemory ? " (from memory)" : ""}`;
  const cells = [
    each.what,
    figure(each.model),
    figure(each.published),
    each.unit,
    figure(each.ratio),
    `×${each.tolerance}`,
  ];
  return `| ${[...cells, verdict, source, each.note ?? ""].map(cell).join(" | ")} |`;
}

function section(room, all) {
  const checks = all.filter((each) => each.use === "check");
  const within = checks.filter((each) => each.within).length;
  const factors = checks.map((each) => Math.max(each.ratio, 1 / each.ratio));
  const summary =
    checks.length === 0
      ? `No independent check: every figure here was given to the model, and ${all.filter((each) => each.within).length} of ${all.length} come out within their tolerance all the same.`
      : `${within} of ${checks.length} checks within their tolerance; the median is off by a factor of ${figure(median(factors))}.`;
  const head =
    "| what | model | published | unit | ratio | tolerance | verdict | source | remark |\n|---|---|---|---|---|---|---|---|---|";
  return `## ${room[0].toUpperCase()}${room.slice(1)}\n\n${summary}\n\n${head}\n${all.map(row).join("\n")}\n`;
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
    "| room | checks | within tolerance | off by a median factor of | fitted, no check |\n|---|---|---|---|---|";
  const lines = rooms.map((room) => {
    const checks = all.filter((each) => each.room === room && each.use === "check");
    const fitted = all.filter((each) => each.room === room && each.use === "fit").length;
    const within = checks.filter((each) => each.within).length;
    const factor = figure(median(checks.map((each) => Math.max(each.ratio, 1 / each.ratio))));
    const percent =
      checks.length === 0 ? "none" : `${within} (${Math.round((100 * within) / checks.length)} %)`;
    return `| ${room} | ${checks.length} | ${percent} | ${checks.length === 0 ? "" : factor} | ${fitted} |`;
  });
  return `## In short\n\n${head}\n${lines.join("\n")}\n`;
}

function write() {
  const all = readAll();
  const rooms = [...new Set(all.map((each) => each.room))].sort();
  const intro =
    "# How right it is\n\nGenerated by `node scripts/write-accuracy.mjs` from the tests: model beside publication. A figure that was given to the model is marked " +
    "“fitted” and is no check. A misfit is shown, not hidden: the tolerance stands where it stood. The ratio is model divided by published.\n";
  const told = existsSync(remarks) ? `\n${readFileSync(remarks, "utf8").trim()}\n` : "";
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
    relativesSection(),
    practiceSection(),
  ];
  return `${intro}${told}\n${parts.join("\n")}`;
}

const text = write();
if (!process.argv.includes("--check")) {
  writeFileSync(page, text);
  console.log(`Wrote docs/accuracy.md.`);
} else if (!existsSync(page) || readFileSync(page, "utf8") !== text) {
  console.error("docs/accuracy.md is stale. Run: npx vitest run && node scripts/write-accuracy.mjs");
  process.exitCode = 1;
} else {
  console.log("docs/accuracy.md is up to date.");
}
