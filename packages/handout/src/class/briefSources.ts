import type { Evidence } from "@keepwright/catalogue";
import { citationWords, type NamedSource } from "../view/sourceLines.js";
import { type MarkedLine, markedLine } from "../words/markedLine.js";
import type { ClassContext } from "./classContext.js";
import { namedEvidence, standingOf } from "./kitSources.js";

/** "life": how long it keeps, worked out from more than the one figure that is named. */
type Told = "life" | "figure";

interface Entry {
  readonly key: string;
  readonly told: Told;
  readonly source: NamedSource;
}

const keys = {
  figure: {
    read: "brief.read",
    memory: "brief.memory",
    "common practice": "brief.practice",
    inferred: "brief.inferred",
  },
  life: {
    read: "brief.life.read",
    memory: "brief.life.memory",
    "common practice": "brief.life.practice",
    inferred: "brief.life.inferred",
  },
} as const;

/** Of one source told of in several ways the less sure one: what is partly recalled is told as recalled. */
const lessSure = (one: Evidence, other: Evidence): Evidence => (one.fromMemory ? one : other);

/** The few sources that a page names by number, in the order in which its figures need them. */
export class BriefSources {
  readonly #entries: Entry[] = [];

  constructor(private readonly context: ClassContext) {}

  /** A text with the numbers of what its figures come from; as it is where it rests on nothing published. */
  marked(text: string, evidence: readonly Evidence[], told: Told = "figure"): string {
    if (evidence.length === 0) return text;
    const sources = [...new Set(evidence.map(({ source }) => source))];
    const numbers = sources.map((source) =>
      this.#numberOf(evidence.filter((one) => one.source === source).reduce(lessSure), told),
    );
    return this.context.say("brief.marked", { text, numbers: numbers.join(", ") });
  }

  /** The same where there is a figure in it. */
  markedFigure(text: string, evidence: readonly Evidence[]): string {
    return /\d/.test(text) ? this.marked(text, evidence) : text;
  }

  #numberOf(evidence: Evidence, told: Told): number {
    const source = namedEvidence(this.context, "", evidence);
    const key = `${told}|${source.source}|${standingOf(source)}`;
    const found = this.#entries.findIndex((entry) => entry.key === key);
    return found >= 0 ? found + 1 : this.#entries.push({ key, told, source });
  }

  /** The lines at the foot of the page, a number each; last, where the whole list is. */
  lines(): MarkedLine[] {
    const { say, handout } = this.context;
    const lines = this.#entries.map(({ told, source }, index) => {
      const citation = citationWords(handout, source);
      return markedLine(say(keys[told][standingOf(source)], { number: index + 1, citation }));
    });
    return [...lines, wholeList(this.context)];
  }
}

/** Where all sources stand: a line for every page that does not name them itself. */
export const wholeList = ({ say }: ClassContext): MarkedLine => ({
  text: say("brief.whole", { title: say("sources.title") }),
});
