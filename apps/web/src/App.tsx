import { kindNames } from "@keepwright/catalogue";
import { memo, Suspense, useMemo } from "react";
import { DeskProvider } from "./behaviour/desk.js";
import { lazyPart } from "./behaviour/lazyPart.js";
import { useLettersAhead } from "./behaviour/lettersAhead.js";
import { useFigures } from "./behaviour/useFigures.js";
import { useHaul } from "./behaviour/useHaul.js";
import { useLanguage } from "./behaviour/useLanguage.js";
import { useRoute } from "./behaviour/useRoute.js";
import { useWorkedOut } from "./behaviour/useWorkedOut.js";
import { KeepingNotices } from "./components/history/KeepingNotices.js";
import { UndoButtons } from "./components/history/UndoButtons.js";
import { Masthead } from "./components/Masthead.js";
import { NewerVersion } from "./components/NewerVersion.js";
import { Safely } from "./components/Safely.js";
import { ScreenFocus } from "./components/ScreenFocus.js";
import { UnpackPage } from "./pages/UnpackPage.js";
import type { Screen } from "./state/route.js";
import { useWords, WordsProvider } from "./words/words.js";

const kinds = new Set(kindNames().keys());

/** The first screen comes with the page; the others are fetched when they are opened. */
const pages: Readonly<Record<Screen, React.ComponentType<{ readonly on: string | undefined }>>> = {
  unpack: memo(UnpackPage),
  kitchen: lazyPart(() => import("./pages/KitchenPage.js")),
  mine: lazyPart(() => import("./pages/MinePage.js")),
  ways: lazyPart(() => import("./pages/WaysPage.js")),
  ask: lazyPart(() => import("./pages/AskPage.js")),
  class: lazyPart(() => import("./pages/ClassPage.js")),
  settings: lazyPart(() => import("./pages/SettingsPage.js")),
};

/** The page, as soon as there are words to say it in. */
export function App() {
  const haul = useHaul(kinds);
  const spoken = useLanguage(haul.state);
  if (!spoken) return spoken;
  const entered = () => haul.keeper.now().state;
  return (
    <WordsProvider value={spoken.say}>
      <Safely of="page" entered={entered} until={haul.state}>
        <SpokenApp haul={haul} {...spoken} />
      </Safely>
    </WordsProvider>
  );
}

/** While a screen is on its way. Who opened the one for asking may have begun to ask. */
function Opening({ screen }: { readonly screen: Screen }) {
  const say = useWords();
  useLettersAhead(screen === "ask");
  return <p role="status">{say("screen.opening")}</p>;
}

type SpokenAppProps = NonNullable<ReturnType<typeof useLanguage>> & {
  readonly haul: ReturnType<typeof useHaul>;
};

/** One desk, and one screen at a time upon it. */
const SpokenApp = memo(function SpokenApp({ haul, language, tag, say, spoken }: SpokenAppProps) {
  const { screen, on } = useRoute();
  const figures = useFigures(tag);
  const worked = useWorkedOut(haul.state, figures, spoken);
  const desk = useMemo(
    () => ({ haul, figures, worked, language, tag }),
    [haul, figures, worked, language, tag],
  );
  const Shown = pages[screen];
  return (
    <DeskProvider value={desk}>
      <Masthead screen={screen}>
        <UndoButtons />
      </Masthead>
      <main id="screen" tabIndex={-1}>
        <NewerVersion />
        <KeepingNotices />
        {figures.failed && <p role="alert">{say("page.noFigures")}</p>}
        <Safely of={{ screen }} entered={() => haul.keeper.now().state} until={screen} asked>
          <Suspense fallback={<Opening screen={screen} />}>
            <ScreenFocus screen={screen}>
              <Shown on={on} />
            </ScreenFocus>
          </Suspense>
        </Safely>
      </main>
    </DeskProvider>
  );
});
