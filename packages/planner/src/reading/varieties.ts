import { stemKey } from "@keepwright/catalogue";
import type { Element, ElementOf } from "./elements.js";
import type { Token } from "./tokens.js";

const stem = (tokens: readonly Token[], { first, next }: Element) =>
  stemKey(
    tokens
      .slice(first, next)
      .map(({ text }) => text)
      .join(" "),
  );

/** Does a name stand right behind another of the same one kind, in other words: “chiles poblanos”? */
function isVariety(tokens: readonly Token[], name: ElementOf<"name">, before: Element | undefined): boolean {
  if (before?.type !== "name" || before.next !== name.first) return false;
  const [kind, ...more] = name.name.kinds;
  const same = kind !== undefined && more.length === 0 && before.name.kinds.length === 1;
  return same && before.name.kinds[0] === kind && stem(tokens, before) !== stem(tokens, name);
}

/** Names with the variety told behind them as one name. The same word twice stays two: whoever speaks a list may say a thing twice. */
export function withVarieties(tokens: readonly Token[], elements: readonly Element[]): Element[] {
  const joined: Element[] = [];
  for (const element of elements) {
    const before = joined.at(-1);
    if (element.type === "name" && before?.type === "name" && isVariety(tokens, element, before)) {
      const { name } = before;
      const implied = [...name.implied, ...element.name.implied];
      const plural = name.plural || element.name.plural;
      joined[joined.length - 1] = { ...before, name: { ...name, implied, plural }, next: element.next };
    } else joined.push(element);
  }
  return joined;
}
