import { endings } from "@keepwright/physics";
import { isAirtight, type Kitchen, mustBreathe, type VentSetting } from "@keepwright/planner";
import type { AskedAnswer, AskedBeforehand } from "../answer/askedAnswer.js";
import { spanWords } from "../words/spans.js";
import { commodityIn, type HandoutContext } from "./context.js";
import { endingWords } from "./endingWords.js";
import { kitchenWords } from "./ordinaryNames.js";
import { isCommonPractice, toldTasks } from "./preparation.js";

/** Where, how and until when: what has to be worked out. */
export interface AskFactsView {
  readonly where: string;
  readonly how: string;
  readonly until: string;
  /** What ends it, when it is ready, and what is to be set or done first. */
  readonly ends: readonly string[];
  readonly first: readonly string[];
}

type Stays = readonly Pick<AskedAnswer["belongs"]["stays"][number], "name" | "wrap">[];

function whereAndHow(context: HandoutContext, [stay, later]: Stays) {
  const { say, capital } = context.speaker;
  const place = kitchenWords(context, stay?.name ?? "");
  const wrap = say(`wrap.${stay?.wrap ?? "none"}`);
  if (!later) return { where: capital(place), how: capital(wrap) };
  const next = kitchenWords(context, later.name);
  const nextWrap = say(`wrap.${later.wrap}`);
  return {
    where: capital(say("ask.whereThen", { place, next })),
    how: capital(wrap === nextWrap ? wrap : say("ask.howThen", { wrap, nextWrap })),
  };
}

function endsLines(context: HandoutContext, { commodity, form, belongs }: AskedAnswer): string[] {
  const { speaker } = context;
  const ripens = form === "whole" && commodityIn(context, commodity)?.ripening !== undefined;
  const { readyOnDay } = belongs;
  const ready =
    readyOnDay === null
      ? speaker.say("ask.notReady")
      : readyOnDay === 0
        ? speaker.say("ask.readyNow")
        : speaker.say("ask.ready", { span: spanWords(speaker, readyOnDay, readyOnDay) });
  return [
    speaker.say("ask.ends", { ending: endingWords(context, { commodity, form }, belongs.life.endedBy) }),
    ...(ripens ? [ready] : []),
  ];
}

function firstLines(
  context: HandoutContext,
  { commodity, preparation }: AskedBeforehand,
  settings: readonly VentSetting[],
): string[] {
  const { say, capital } = context.speaker;
  const star = (line: string, practice: boolean) => (practice ? say("ask.practice", { line }) : line);
  return [
    ...settings.map((setting) => say(`vent.${setting}`)),
    ...toldTasks(preparation).map((task) =>
      star(capital(say(`prepare.do.${task}`)), isCommonPractice(context, commodity, task)),
    ),
  ];
}

/** The facts in words. */
export function askFacts(context: HandoutContext, answer: AskedAnswer): AskFactsView {
  const { speaker } = context;
  const { life } = answer.belongs;
  return {
    ...whereAndHow(context, answer.belongs.stays),
    until: speaker.capital(spanWords(speaker, life.early, life.late)),
    ends: endsLines(context, answer),
    first: firstLines(context, answer, [...new Set(answer.belongs.vents.map(({ setting }) => setting))]),
  };
}

const longest = (lines: readonly string[]): string =>
  lines.reduce((long, line) => (line.length > long.length ? line : long), "");
/** The two longest of some words, the longer first; the same twice where there is one. */
const twoLongest = <Value>(values: readonly Value[], words: (value: Value) => string): [Value, Value] => {
  const [first, second] = [...values].sort((one, other) => words(other).length - words(one).length);
  return [first!, second ?? first!];
};

/** The longest two stays in words: what ripens does so in the room, where there is one, and then goes elsewhere. */
function longStays(context: HandoutContext, known: AskedBeforehand, kitchen: Kitchen): Stays {
  const { speaker } = context;
  const commodity = commodityIn(context, known.commodity);
  const wraps = ["none" as const, ...kitchen.wraps].filter(
    (wrap) =>
      (wrap !== "glass of water" || commodity?.standsInWater?.value === true) &&
      !(commodity && known.form === "whole" && mustBreathe(commodity) && isAirtight(wrap)),
  );
  const [wrap, other] = twoLongest(wraps, (each) => speaker.say(`wrap.${each}`));
  const name = (places: Kitchen["places"]) =>
    twoLongest(places, (place) => kitchenWords(context, place.name))[0].name;
  const room = kitchen.places.filter(({ refrigerator }) => refrigerator === undefined);
  const cold = kitchen.places.filter(({ refrigerator }) => refrigerator !== undefined);
  const ripens = known.form === "whole" && commodity?.ripening !== undefined && known.ripeness !== "ripe";
  return ripens && room.length > 0 && cold.length > 0
    ? [
        { name: name(room), wrap },
        { name: name(cold), wrap: other },
      ]
    : [
        { name: name(kitchen.places), wrap },
        { name: name(kitchen.places), wrap: other },
      ];
}

/** A span that is as long in words as any about one kind [d]: from some days to some weeks. */
const longSpan = [5, 21] as const;

/**
 * The longest that may be answered about a kind in a kitchen, to keep room for the answer while it is worked out, so that nothing moves when it
 * comes. Never to be shown.
 */
export function askRoom(context: HandoutContext, known: AskedBeforehand, kitchen: Kitchen): AskFactsView {
  const { speaker } = context;
  const ripens = known.form === "whole" && commodityIn(context, known.commodity)?.ripening !== undefined;
  const moves = ripens && known.ripeness !== "ripe";
  const stays = moves ? longStays(context, known, kitchen) : longStays(context, known, kitchen).slice(0, 1);
  const ending = longest(endings.map((each) => endingWords(context, known, each)));
  const until = speaker.capital(spanWords(speaker, ...longSpan));
  const ready = [
    speaker.say("ask.notReady"),
    speaker.say("ask.ready", { span: spanWords(speaker, longSpan[1], longSpan[1]) }),
  ];
  const settable = kitchen.places.some(({ vent }) => vent === "choose");
  return {
    ...whereAndHow(context, stays),
    until,
    ends: [speaker.say("ask.ends", { ending }), ...(ripens ? [longest(ready)] : [])],
    first: firstLines(context, known, settable ? ["half"] : []),
  };
}
