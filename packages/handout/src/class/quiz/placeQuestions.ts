import { commodityOf } from "@keepwright/catalogue";
import type { AnsweredPlace } from "../../answer/itemAnswer.js";
import { kitchenWords } from "../../view/ordinaryNames.js";
import { temperatureWords } from "../../words/amounts.js";
import { spanWords } from "../../words/spans.js";
import type { ClassContext } from "../classContext.js";
import { everInCold, kindsOf } from "../myths/bearing.js";
import { choiceOf } from "./gasQuestions.js";
import type { Asker, Choice, Draft } from "./question.js";

/**
 * A place is wrong beyond doubt where life there is at most this share of the best [1]. A declared preference, no source. Of what moves once it is ripe only
 * places where it never gets ripe are wrong: the life in the answer counts the later place too, and cannot be set beside that in one place.
 */
const wrongBelow = 0.5;

const kindAt = (place: AnsweredPlace) => place.stays[0]!.placeKind;

/** Kinds of place that are wrong beyond doubt to put it first. */
export function wrongPlaces(belongs: AnsweredPlace, elsewhere: readonly AnsweredPlace[]): AnsweredPlace[] {
  const moves = belongs.stays.length > 1;
  return elsewhere.filter(
    (place) =>
      kindAt(place) !== kindAt(belongs) &&
      ((place.readyOnDay === null && belongs.readyOnDay !== null) ||
        (!moves && place.life.middle <= wrongBelow * belongs.life.middle)),
  );
}

/** What is worked out here from the figures on the answer sheet. */
const workedOut = {
  source: "keepwright-inference",
  place: "worked out for this kitchen from the figures on the answer sheet",
  kind: "inferred" as const,
  fromMemory: false,
};

function placeDraft(context: ClassContext, id: string): Draft {
  const { handout, say } = context;
  const { belongs } = context.answer(id);
  const choice = (place: AnsweredPlace): Choice => ({
    key: kindAt(place),
    text: handout.speaker.capital(handout.speaker.say(`place.kind.${kindAt(place)}`)),
  });
  const name = context.title(id);
  const moves = belongs.stays.length > 1;
  const span = spanWords(handout.speaker, belongs.life.early, belongs.life.late);
  const later = kitchenWords(handout, belongs.stays[1]?.name ?? "");
  return {
    sort: "place",
    subject: id,
    question: say(moves ? "question.place.first" : "question.place", { name }),
    right: choice(belongs),
    wrong: wrongPlaces(belongs, context.elsewhere(id)).map(choice),
    why: () =>
      moves
        ? say("question.why.place.first", { name, span, later })
        : say("question.why.place", { name, span }),
    evidence: [workedOut],
  };
}

const places: Asker = {
  sort: "place",
  topics: ["places"],
  least: 1,
  drafts: (context) => context.items.map((id) => placeDraft(context, id)),
};

const longest: Asker = {
  sort: "longest",
  topics: ["lasting"],
  least: 2,
  drafts(context) {
    const { speaker } = context.handout;
    const lives = context.items.map((id) => ({ id, life: context.answer(id).belongs.life }));
    return lives.map(({ id, life }) => ({
      sort: "longest",
      subject: id,
      question: context.say("question.longest"),
      right: choiceOf(context, { id }),
      // Ranges that do not touch: the shortest of the one is longer than the longest of the others.
      wrong: lives
        .filter((other) => other.life.late < life.early)
        .map((other) => choiceOf(context, { id: other.id })),
      why: () =>
        context.say("question.why.longest", {
          name: context.title(id),
          span: spanWords(speaker, life.early, life.late),
        }),
      evidence: [workedOut],
    }));
  },
};

/** Lowest safe temperature [°C] from which a kind is hurt by any refrigerator's cold. Inferred: well above the warmest that is safe for food. */
const hurtFrom = 7;

const cold: Asker = {
  sort: "cold",
  topics: ["places"],
  least: 2,
  drafts(context) {
    const { speaker, units } = context.handout;
    const kinds = kindsOf(context);
    const wrong = kinds.filter(({ chilling }) => !chilling).map((kind) => choiceOf(context, kind));
    return kinds.flatMap((kind): Draft[] => {
      const threshold = commodityOf(context.catalogue, kind.id).chilling?.threshold;
      if (threshold === undefined || (threshold.low ?? threshold.value) < hurtFrom) return [];
      // What its own answer sends to the cold, though it be for want of a better place or once it is ripe, is not said to be hurt by it.
      if (everInCold(context, kind.id)) return [];
      return [
        {
          sort: "cold",
          subject: kind.id,
          question: context.say("question.cold"),
          right: choiceOf(context, kind),
          wrong,
          why: () =>
            context.say("question.why.cold", {
              name: context.title(kind.id),
              degrees: temperatureWords(speaker, units, threshold.value),
            }),
          evidence: [threshold],
        },
      ];
    });
  },
};

/** Questions about places, and how long things last there. */
export const placeQuestions: readonly Asker[] = [places, longest, cold];
