import { ventSettings } from "../problem/kitchen.js";
import { type Choice, type Part, type Programme, partDoing } from "../problem/programme.js";

/** A choice like the present one but for one part's programme. */
export const withProgramme = (choice: Choice, part: number, programme: Programme): Choice => ({
  parts: choice.parts.with(part, partDoing(choice.parts[part]!, programme)),
  vents: choice.vents,
});

/** A choice like the present one but for one vent, at each other setting. */
export const withOtherSettings = (choice: Choice, vent: number): Choice[] =>
  ventSettings
    .filter((setting) => setting !== choice.vents[vent])
    .map((setting) => ({ parts: choice.parts, vents: choice.vents.with(vent, setting) }));

/** Some portions of a part taken out into a part of their own. */
export function withSplit(choice: Choice, index: number, portions: number, programme: Programme): Choice {
  const part = choice.parts[index]!;
  const rest: Part = { lot: part.lot, portions: part.portions - portions, programme: part.programme };
  const own: Part = { lot: part.lot, portions, programme };
  const parts = [...choice.parts.slice(0, index), rest, own, ...choice.parts.slice(index + 1)];
  return { parts, vents: choice.vents };
}

/** Two parts of one lot made one, with the first's programme. */
export function withJoin(choice: Choice, first: number, second: number): Choice {
  const { lot, portions, programme } = choice.parts[first]!;
  const joined: Part = { lot, portions: portions + choice.parts[second]!.portions, programme };
  return { parts: choice.parts.with(first, joined).toSpliced(second, 1), vents: choice.vents };
}
