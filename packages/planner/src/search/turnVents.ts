import { programmeKey } from "../problem/programme.js";
import type { Evaluation } from "./evaluate.js";
import { withOtherSettings } from "./moves.js";
import { sameAir } from "./rememberedEstimates.js";
import type { Search } from "./search.js";

/** What lay behind a vent when turning it was tried in vain, and the air there. */
interface InVain {
  readonly contents: string;
  readonly air: Evaluation["trajectory"]["inner"]["air"];
}

const tried = new WeakMap<Search, Map<number, InVain>>();

/** Boxes of air behind a vent. */
const boxesBehind = ({ prepared: { problem } }: Search, vent: number): number[] => [
  ...new Set(
    problem.places.flatMap((place) => (place.vent === vent && place.box !== "room" ? [place.box] : [])),
  ),
];

/** What lies behind a vent, and how the vent is set, as a text. */
function contentsBehind({ current, prepared: { problem } }: Search, vent: number): string {
  const lies = current.choice.parts.flatMap(({ lot, portions, programme }) =>
    programme.stays.some(({ place }) => problem.places[place]!.vent === vent)
      ? [`${lot}:${portions}:${programmeKey(programme)}`]
      : [],
  );
  return `${current.choice.vents[vent]} ${lies.join(";")}`;
}

/** Nothing has changed behind the vent since turning it was judged in full in vain: the same lies there, in nearly the same air. */
function knownInVain(search: Search, vent: number, contents: string): boolean {
  const before = tried.get(search)?.get(vent);
  return (
    before !== undefined &&
    before.contents === contents &&
    boxesBehind(search, vent).every((box) => sameAir(before, search.current, box))
  );
}

function turnVent(search: Search, vent: number): boolean {
  const contents = contentsBehind(search, vent);
  if (knownInVain(search, vent, contents)) return false;
  if (withOtherSettings(search.current.choice, vent).some((choice) => search.attempt(choice))) return true;
  const vain = tried.get(search) ?? new Map<number, InVain>();
  tried.set(search, vain);
  vain.set(vent, { contents, air: search.current.trajectory.inner.air });
  return false;
}

/** Sets each vent in turn otherwise where that helps. */
export const turnVents = (search: Search): boolean =>
  search.prepared.problem.vents.reduce(
    (improved: boolean, _, vent) => turnVent(search, vent) || improved,
    false,
  );
