import { ventSettings } from "../problem/kitchen.js";
import type { Choice, Part, Programme } from "../problem/programme.js";

/** A choice like the present one but for one part's programme. */
export const withProgramme = (choice: Choice, part: number, programme: Programme): Choice => ({
  ...choice,
  parts: choice.parts.with(part, { ...choice.parts[part]!, programme }),
});

/** A choice like the present one but for one vent, at each other setting. */
export const withOtherSettings = (choice: Choice, vent: number): Choice[] =>
  ventSettings
    .filter((setting) => setting !== choice.vents[vent])
    .map((setting) => ({ ...choice, vents: choice.vents.with(vent, setting) }));

/** Some portions of a part taken out into a part of their own. */
export function withSplit(choice: Choice, index: number, portions: number, programme: Programme): Choice {
  const part = choice.parts[index]!;
  const rest: Part = { ...part, portions: part.portions - portions };
  const own: Part = { lot: part.lot, portions, programme };
  return { ...choice, parts: [...choice.parts.slice(0, index), rest, own, ...choice.parts.slice(index + 1)] };
}

/** Two parts of one lot made one, with the first's programme. */
export function withJoin(choice: Choice, first: number, second: number): Choice {
  const joined: Part = {
    ...choice.parts[first]!,
    portions: choice.parts[first]!.portions + choice.parts[second]!.portions,
  };
  return { ...choice, parts: choice.parts.with(first, joined).toSpliced(second, 1) };
}
