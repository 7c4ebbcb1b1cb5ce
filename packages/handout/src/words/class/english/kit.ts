import type { Messages } from "../../message.js";

/** A kit as a whole, its answer sheets and its page of places. */
export const kitEnglish = {
  "kit.title": "How to keep what you buy",
  "kit.page": "Page {page} of {pages}",
  "kit.sources": "Where this comes from",
  "kit.foot": "{title}. Worked out by Keepwright.",
  "kit.host": "For the host",
  "kit.invented": "Made up for this class: no real home.",

  "answer.where": "Where",
  "answer.how": "How",
  "answer.until": "How long",
  "answer.first": "Do first",
  "answer.range": "The days are a likely span, not a promise. Look, smell and feel.",
  "answer.season": "{season}: {months}",
  "answer.kitchen": "Worked out for: {kitchen}.",

  // The few sources on a page, and all of them on the host's own
  "brief.marked": "{text} ({numbers})",
  "brief.read": "({number}) {citation}.",
  "brief.memory": "({number}) {citation} (recalled, not checked in print).",
  "brief.practice": "({number}) Common practice, no source.",
  "brief.inferred": "({number}) Inferred; the whole list says from what.",
  "brief.life.read": "({number}) Worked out by Keepwright. How long it keeps in store: {citation}.",
  "brief.life.memory":
    "({number}) Worked out by Keepwright. How long it keeps in store: {citation} (recalled, not checked in print).",
  "brief.life.practice":
    "({number}) Worked out by Keepwright. How long it keeps in store: common practice, no source.",
  "brief.life.inferred": "({number}) Worked out by Keepwright. How long it keeps in store is inferred.",
  "brief.source.read": "Source: {citation}.",
  "brief.source.memory": "Source: {citation} (recalled, not checked in print).",
  "brief.source.practice": "Source: common practice, no source.",
  "brief.source.inferred": "Source: inferred; the whole list says from what.",
  "brief.whole":
    "More sources, and which are recalled or inferred only: on the host's paper “{title}”. Ask for it.",
  "sources.title": "Where it all comes from",
  "sources.intro": "The papers for the group name only a few sources. Here are all of them, paper by paper.",
  "sources.limits": "cautions",

  "size.cut": "{centimetres} cm (1 inch)",

  "places.title": "Where it all goes",
  "places.subtitle": "To hang up on a wall",
  "places.heading": "{place} ({temperature})",
  "places.part": "{place}: {part} ({temperature})",
  "places.box": "{place}: box {number} ({temperature})",
  "places.part.upper shelf": "upper shelf",
  "places.part.middle shelf": "middle shelf",
  "places.part.lower shelf": "lower shelf",
  "places.part.upper rack": "upper rack",
  "places.part.lower rack": "lower rack",
  "places.part.left end": "left end",
  "places.part.right end": "right end",
  "places.part.left side": "left side",
  "places.part.right side": "right side",
  "places.first": "{name}: {wrap}; {span}",
  "places.ripening": "{name}: {wrap} until ripe, then “{next}”; {span} in all",
  "places.ripe": "{name}, once ripe: {wrap}",
  "places.intro":
    "Gas or smell from one harms another: keep each in its own spot, even if its own sheet says the next one. In a full kitchen some go elsewhere.",
  "places.boxes": "Where no spot is left, use a box with its lid on (common practice, no source).",
  "places.ajar": "Leave the lid ajar for what must breathe: {names}.",
  "places.source":
    "Days: worked out by Keepwright from the figures on the answer sheets. They are likely, not sure.",
  "places.alone": "Each thing is looked at by itself here. In a full kitchen some may have to lie elsewhere.",
} as const satisfies Messages;
