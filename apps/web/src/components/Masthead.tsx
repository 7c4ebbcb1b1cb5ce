import type { ReactNode } from "react";
import { addressOf, type Screen, screens } from "../state/route.js";
import { useWords } from "../words/words.js";

interface MastheadProps {
  readonly screen: Screen;
  /** What stands on every screen below the links. */
  readonly children: ReactNode;
}

/** The name of the page and the way to its screens. */
export function Masthead({ screen, children }: MastheadProps) {
  const say = useWords();
  return (
    <header className="masthead">
      <h1>{say("page.name")}</h1>
      <p>
        {say("page.lead")} <span className="private">{say("page.private")}</span>
      </p>
      <nav className="screens" aria-label={say("screens.label")}>
        <ul>
          {screens.map((each) => (
            <li key={each}>
              <a href={addressOf(each)} aria-current={each === screen ? "page" : undefined}>
                {say(`screen.${each}`)}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      {children}
    </header>
  );
}
