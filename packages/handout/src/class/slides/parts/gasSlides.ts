import { commodityOf, type Evidence } from "@keepwright/catalogue";
import { givesMuchEthylene, harmedByEthylene } from "../../../answer/apart.js";
import type { ClassContext } from "../../classContext.js";
import type { KitSource } from "../../classKit.js";
import { kitSources, namedEvidence } from "../../kitSources.js";
import { kindsOf, namesOfKinds, thoseWith } from "../../myths/bearing.js";
import { ripensAtHome, ripensEvidence } from "../../quiz/gasQuestions.js";
import { type DeckSlide, type SlidePart, sourced } from "../deck.js";

type Rows = Extract<SlidePart, { part: "pairs" }>["rows"];

const row = (context: ClassContext, name: string, ids: readonly string[]): Rows =>
  ids.length > 0 ? [{ name, text: `${namesOfKinds(context, ids)}.` }] : [];

const sourcesFrom = (context: ClassContext, figure: string, all: readonly Evidence[]): KitSource[] =>
  kitSources(
    context,
    all.map((one) => namedEvidence(context, figure, one)),
  );

/** Which of the kinds give off the ripening gas, which it harms, and whose smell which take on: by what the answer sheets say. Empty where none does. */
export function apartSlides(context: ClassContext): DeckSlide[] {
  const { say, handout, catalogue, items } = context;
  const { speaker } = handout;
  const givers = thoseWith(context, givesMuchEthylene);
  const harmed = thoseWith(context, harmedByEthylene);
  const smells = catalogue.odours.filter(
    ({ giver, taker }) => items.includes(giver) && items.includes(taker),
  );
  const smellLines = smells.map(({ giver, taker }) =>
    speaker.capital(
      speaker.say("ask.apart.smell to", { names: context.name(taker), name: context.name(giver) }),
    ),
  );
  const rows = [
    ...row(context, say("slides.apart.give"), givers),
    ...row(context, say("slides.apart.harmed"), harmed),
    ...(smells.length > 0 ? [{ name: say("slides.apart.smell"), text: smellLines.join("\n") }] : []),
  ];
  if (rows.length === 0) return [];
  const evidence = kindsOf(context).flatMap(({ id, ethylene }) => [
    ...(givers.includes(id) ? ethylene.production : []),
    ...(harmed.includes(id) ? [ethylene.sensitivity] : []),
  ]);
  return [
    {
      id: "apart",
      sort: "plain",
      title: say("running.part.apart"),
      parts: [{ part: "pairs", rows }],
      notes: [say("slides.question")],
      ...sourced([
        ...sourcesFrom(context, say("slides.figure.gas"), evidence),
        ...sourcesFrom(context, speaker.say("ask.figure.smells"), smells),
      ]),
    },
  ];
}

/** Which of the kinds go on to ripen at home: the question, and on a slide of its own the answer. Empty where the catalogue settles it for less than two: there is nothing to choose. */
export function ripeningSlides(context: ClassContext): DeckSlide[] {
  const { say } = context;
  const asked = thoseWith(context, (kind) => ripensAtHome(kind) !== undefined);
  if (asked.length < 2) return [];
  const does = (wanted: boolean) =>
    asked.filter((id) => ripensAtHome(commodityOf(context.catalogue, id)) === wanted);
  const plain = { sort: "plain", notes: [] } as const;
  const evidence = asked.flatMap((id) => ripensEvidence(commodityOf(context.catalogue, id)));
  return [
    {
      ...plain,
      id: "ripening",
      title: say("running.part.ripening"),
      subtitle: say("slides.ripening.ask"),
      parts: [{ part: "list", mark: "dot", items: asked.map(context.title) }],
      sources: [],
    },
    {
      ...plain,
      id: "ripening-answer",
      title: say("slides.ripening.title"),
      parts: [
        {
          part: "pairs",
          rows: [
            ...row(context, say("slides.ripening.yes"), does(true)),
            ...row(context, say("slides.ripening.no"), does(false)),
          ],
        },
      ],
      ...sourced(sourcesFrom(context, say("slides.figure.ripening"), evidence)),
    },
  ];
}
