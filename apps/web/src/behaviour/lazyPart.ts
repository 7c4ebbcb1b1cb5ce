import { type ComponentType, createElement, type LazyExoticComponent, lazy, type ReactElement } from "react";

type Load<Props extends object> = () => Promise<{ readonly default: ComponentType<Props> }>;

/** How to ask anew for each part that did not come. */
const failed = new Set<() => void>();

/** A part of the page that is fetched when it is first drawn. One that did not come is kept as such until `askAnew`. */
export function lazyPart<Props extends object>(load: Load<Props>): (props: Props) => ReactElement {
  const asked = (): LazyExoticComponent<ComponentType<Props>> =>
    lazy(() =>
      load().catch((error: unknown) => {
        failed.add(askAgain);
        throw error;
      }),
    );
  let part = asked();
  const askAgain = () => {
    part = asked();
  };
  return (props) => createElement(part as ComponentType<Props>, props);
}

/** Has each part that did not come fetched anew when it is drawn next. True where there was one. */
export function askAnew(): boolean {
  const some = failed.size > 0;
  for (const askAgain of failed) askAgain();
  failed.clear();
  return some;
}
