// The part of docs/accuracy.md on claimed chances: a table, a drawing, and the waste claimed beside the waste drawn.

/** Where the drawing lies, beside the page. */
export const drawingFile = "accuracy-chances.svg";

const grams = (value) => Math.round(value).toString();
/** To two digits, and nothing is nothing without a sign. */
const share = (value) => (Math.round(100 * value) / 100 || 0).toFixed(2);
const percent = (part, whole) => `${part} of ${whole} (${Math.round((100 * part) / whole)} %)`;
const sum = (values) => values.reduce((total, value) => total + value, 0);
const tableOf = (head, rows) =>
  [head, head.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");

function binTable({ bins, enough }) {
  const rows = bins.map((bin) => [
    `${bin.from}–${bin.to}`,
    bin.occasions,
    bin.portions,
    share(bin.claimed),
    share(bin.observed),
    share(bin.observed - bin.claimed),
    bin.occasions < enough ? "too few" : Math.abs(bin.observed - bin.claimed) > 0.1 ? "MISFIT" : "within 0.1",
    bin.farOff,
  ]);
  const head = ["claimed", "meals and remains", "portions", "mean claim", "in time", "difference", "verdict"];
  return tableOf([...head, "single ones off by more than 0.1"], rows);
}

function haulTable({ hauls }) {
  const row = ({ name, lots, claimed, waste, saved }) => [
    name,
    lots,
    grams(claimed),
    `${grams(waste.mean)} ± ${grams(waste.standardError)}`,
    grams(waste.median),
    `${grams(waste.low)}–${grams(waste.high)}`,
    `${grams(saved.mean)} ± ${grams(saved.standardError)}`,
  ];
  const head = [
    "haul",
    "lots",
    "claimed waste [g]",
    "mean over the draws [g]",
    "median [g]",
    "80 % of draws [g]",
  ];
  return tableOf([...head, "saved over unsorted [g]"], hauls.filter(({ isExample }) => isExample).map(row));
}

/** How the claims of all generated hauls compare, in one sentence. */
function generatedSentence({ hauls }) {
  const own = hauls.filter(({ isExample }) => !isExample);
  const claimed = sum(own.map((haul) => haul.claimed));
  const wasted = sum(own.map(({ waste }) => waste.mean));
  const off = own.filter(
    ({ claimed: claim, waste }) => Math.abs(waste.mean - claim) > 2 * waste.standardError,
  );
  return (
    `The ${own.length} generated hauls together: ${grams(claimed)} g claimed, ${grams(wasted)} g over the draws. In ${off.length} of them the two lie more than two standard errors apart, ` +
    `in ${off.filter(({ claimed: claim, waste }) => waste.mean > claim).length} of these with more wasted than claimed.`
  );
}

/** Which kinds the single misfits are of. */
function misfitSentence({ misfits, bins }) {
  const all = sum(bins.map(({ occasions }) => occasions));
  if (misfits.length === 0) return `None of ${all} meals and remains is off by more than 0.1.`;
  const kinds = [...new Set(misfits.map(({ kind }) => kind))].sort();
  const worse = misfits.filter(({ claimed, observed }) => observed < claimed).length;
  return `${percent(misfits.length, all)} meals and remains are off by more than 0.1, ${worse} of them because less is eaten in time than claimed: ${kinds.join(", ")}.`;
}

/** The section of docs/accuracy.md. */
export function chancesSection(record) {
  const { draws, examples, generated } = record;
  return (
    "## Chances the planner claims\n\n" +
    `For every meal the planner claims a chance of being eaten in time (not past its best by then; whether it is ripe by then is told apart, and not counted here), from a log-normal life about one simulation at middle values. Here ${examples} worked examples and ${generated} generated hauls, each planned and ` +
    `each left unsorted, were carried out ${draws} times with temperatures, ages on arrival, biology and late meals drawn, the whole kitchen simulated each time ` +
    "([uncertainty](model/uncertainty.md), [decision](decisions/0108-draws.md)). **This checks the planner’s arithmetic of chance against its own model: the spreads are the same in both. It says nothing of real kitchens**; " +
    "for how often lives hold against publications, see Uncertainty.\n\n" +
    `![Share eaten in time against the chance claimed, by tenths; the numbers are in the table below](${drawingFile})\n\n${binTable(record)}\n\n${misfitSentence(record)}\n\n` +
    `${haulTable(record)}\n\n${generatedSentence(record)}\n`
  );
}

const size = 440;
const margin = 56;
const at = (value) => (margin + value * (size - 2 * margin)).toFixed(1);
const up = (value) => (size - margin - value * (size - 2 * margin)).toFixed(1);
const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1];

const gridLines = () =>
  ticks.map(
    (tick) =>
      `<path d="M${at(tick)} ${up(0)}V${up(1)}M${at(0)} ${up(tick)}H${at(1)}" stroke="#dddddd"/>` +
      `<text x="${at(tick)}" y="${size - margin + 18}" text-anchor="middle">${tick}</text>` +
      `<text x="${margin - 8}" y="${Number(up(tick)) + 4}" text-anchor="end">${tick}</text>`,
  );

/** Area of a dot goes with its portions, within what can be seen and told apart. */
function dot({ claimed, observed, portions, occasions }, { enough }) {
  const radius = Math.min(14, Math.max(3, Math.sqrt(portions) / 2)).toFixed(1);
  const fill = occasions < enough ? "none" : "#1f5fa8";
  return `<circle cx="${at(claimed)}" cy="${up(observed)}" r="${radius}" fill="${fill}" fill-opacity="0.8" stroke="#1f5fa8"/>`;
}

/** The drawing as a file of its own: viewers of Markdown strip drawings written into the text. */
export function chancesDrawing(record) {
  const band = `M${at(0)} ${up(0)}L${at(0)} ${up(0.1)}L${at(0.9)} ${up(1)}H${at(1)}V${up(0.9)}L${at(0.1)} ${up(0)}Z`;
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" width="${size}" height="${size}" role="img" aria-labelledby="title note" font-family="sans-serif" font-size="12" fill="#222222">`,
    `<title id="title">Share eaten in time against the chance claimed</title>`,
    `<desc id="note">One dot for each tenth of claimed chances; its area goes with the portions, hollow where there are fewer than ${record.enough} meals. On the line the claim holds; the band is 0.1 to either side. The numbers stand in the table of docs/accuracy.md.</desc>`,
    `<rect width="${size}" height="${size}" fill="#ffffff"/>`,
    `<path d="${band}" fill="#e8eef6"/>`,
    ...gridLines(),
    `<path d="M${at(0)} ${up(0)}L${at(1)} ${up(1)}" stroke="#666666" stroke-dasharray="4 4"/>`,
    ...record.bins.filter(({ occasions }) => occasions > 0).map((bin) => dot(bin, record)),
    `<text x="${size / 2}" y="${size - 12}" text-anchor="middle">chance of being eaten in time, as claimed</text>`,
    `<text x="16" y="${size / 2}" text-anchor="middle" transform="rotate(-90 16 ${size / 2})">share eaten in time over the draws</text>`,
    "</svg>",
  ];
  return `${lines.join("\n")}\n`;
}
