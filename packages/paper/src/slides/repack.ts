import JSZip from "jszip";
import { colours, fonts } from "./looks.js";

/** Date of everything in the file: the first that a zip archive can hold. The same deck then has the same bytes whenever it is made. */
const fixedDate = new Date(Date.UTC(1980, 0, 1));
const fixedMoment = "1980-01-01T00:00:00Z";

/** Colours of the theme, for whoever goes on working with the slides: those that are used, and greys of the same ink. */
const themeColours: Readonly<Record<string, string>> = {
  dk1: colours.ink,
  lt1: colours.paper,
  dk2: colours.soft,
  lt2: colours.pale,
  accent1: colours.ink,
  accent2: colours.accent,
  accent3: colours.line,
  accent4: colours.soft,
  accent5: "A8714F",
  accent6: "5F8A77",
  hlink: colours.accent,
  folHlink: colours.soft,
};

function ownTheme(xml: string): string {
  const named = xml
    .replaceAll('name="Office Theme"', 'name="Keepwright"')
    .replaceAll('<a:clrScheme name="Office">', '<a:clrScheme name="Keepwright">')
    .replaceAll('<a:fontScheme name="Office">', '<a:fontScheme name="Keepwright">')
    .replaceAll('<a:fmtScheme name="Office">', '<a:fmtScheme name="Keepwright">')
    .replace(/<a:extLst>.*<\/a:extLst>/su, "");
  return Object.entries(themeColours).reduce(
    (text, [name, colour]) =>
      text.replace(
        new RegExp(`<a:${name}>.*?</a:${name}>`, "su"),
        `<a:${name}><a:srgbClr val="${colour}"/></a:${name}>`,
      ),
    named,
  );
}

/** One paragraph for each line of the notes: a line break within a run is no more than a space to most programs. */
const notesInParagraphs = (xml: string): string =>
  xml.replace(
    /<a:p><a:r>(<a:rPr[^>]*\/>)<a:t>([^<]*)<\/a:t><\/a:r><a:endParaRPr[^>]*\/><\/a:p>/u,
    (_, style: string, text: string) =>
      text
        .split(/\r?\n/u)
        .map((line) => `<a:p><a:r>${style}<a:t>${line}</a:t></a:r></a:p>`)
        .join(""),
  );

/** The second line is dashed with square points. */
function dashed(xml: string): string {
  let seen = 0;
  return xml.replace(/<c:ser>.*?<\/c:ser>/gsu, (series) =>
    seen++ === 0
      ? series
      : series
          .replaceAll('<a:prstDash val="solid"/>', '<a:prstDash val="dash"/>')
          .replaceAll('<c:symbol val="circle"/>', '<c:symbol val="square"/>'),
  );
}

/** The standard has the list of notes masters before that of the slides. */
const inOrder = (xml: string): string =>
  xml.replace(/(<p:sldIdLst>.*<\/p:sldIdLst>)(<p:notesMasterIdLst>.*<\/p:notesMasterIdLst>)/su, "$2$1");

/** The second series is hatched and the third has a rim, so that they can be told apart in one colour. */
function patterned(xml: string): string {
  const solid = (colour: string): RegExp =>
    new RegExp(`<c:spPr>\\s*<a:solidFill>\\s*<a:srgbClr val="${colour}">?.*?</c:spPr>`, "gsu");
  const rim = `<a:ln w="12700"><a:solidFill><a:srgbClr val="${colours.ink}"/></a:solidFill></a:ln>`;
  const hatched = `<c:spPr><a:pattFill prst="wdUpDiag"><a:fgClr><a:srgbClr val="${colours.accent}"/></a:fgClr><a:bgClr><a:srgbClr val="${colours.pale}"/></a:bgClr></a:pattFill>${rim}</c:spPr>`;
  const white = `<c:spPr><a:solidFill><a:srgbClr val="${colours.white}"/></a:solidFill>${rim}</c:spPr>`;
  if (!xml.includes("<c:barChart>")) return dashed(xml);
  return xml.replace(solid(colours.accent), hatched).replace(solid(colours.white), white);
}

/** Where a series has no value there is neither a point nor a cell, rather than an empty one. */
const withoutEmpty = (xml: string): string =>
  xml.replace(/<c:pt idx="\d+"><c:v><\/c:v><\/c:pt>|<c r="[A-Z]+\d+"><v><\/v><\/c>/gu, "");

function ownXml(path: string, xml: string, language: string): string {
  const spoken = xml.replace(/lang="en-US"/gu, `lang="${language}"`).replace(/ altLang="en-US"/gu, "");
  if (path.startsWith("ppt/theme/")) return ownTheme(spoken);
  if (/^ppt\/notesSlides\/notesSlide\d+\.xml$/u.test(path)) return notesInParagraphs(spoken);
  if (/^ppt\/charts\/chart\d+\.xml$/u.test(path)) return withoutEmpty(patterned(spoken));
  if (path.startsWith("xl/worksheets/")) return withoutEmpty(spoken);
  if (path === "ppt/presentation.xml") return inOrder(spoken);
  if (path === "docProps/app.xml")
    return spoken
      .replace("Microsoft Office PowerPoint", "Keepwright")
      .replace("<vt:lpstr>Arial</vt:lpstr>", `<vt:lpstr>${fonts.heading}</vt:lpstr>`)
      .replace("<vt:lpstr>Calibri</vt:lpstr>", `<vt:lpstr>${fonts.body}</vt:lpstr>`)
      .replace("<vt:lpstr>Office Theme</vt:lpstr>", "<vt:lpstr>Keepwright</vt:lpstr>");
  if (path === "docProps/core.xml")
    return spoken
      .replace(/(<dcterms:(?:created|modified)[^>]*>)[^<]*/gu, `$1${fixedMoment}`)
      .replace("</cp:coreProperties>", `<dc:language>${language}</dc:language></cp:coreProperties>`);
  return spoken;
}

/** Names that the maker draws by chance, made plain numbers in the order in which they stand. */
function fixedNames(xml: string): string {
  const seen = new Map<string, string>();
  return xml.replace(/\{[0-9A-Fa-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\}/gu, (name) => {
    const number = seen.get(name) ?? String(seen.size + 1).padStart(12, "0");
    seen.set(name, number);
    return `{00000000-0000-4000-8000-${number}}`;
  });
}

/**
 * The archive made anew: in the order of names, with one date, its language and its own theme; a workbook within it likewise. What the maker takes from the
 * clock or from chance is gone.
 */
export async function repacked(bytes: Uint8Array, language: string): Promise<Uint8Array> {
  const before = await JSZip.loadAsync(bytes);
  const after = new JSZip();
  const files = Object.values(before.files).filter(({ dir }) => !dir);
  for (const file of files.sort((one, other) => (one.name < other.name ? -1 : 1))) {
    const { name } = file;
    const options = { date: fixedDate, createFolders: false };
    if (/\.(xml|rels)$/u.test(name)) {
      after.file(name, fixedNames(ownXml(name, await file.async("string"), language)), options);
    } else if (name.endsWith(".xlsx")) {
      after.file(name, await repacked(await file.async("uint8array"), language), options);
    } else after.file(name, await file.async("uint8array"), options);
  }
  return after.generateAsync({ type: "uint8array", compression: "DEFLATE", platform: "DOS" });
}
