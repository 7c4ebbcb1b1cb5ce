import type { Messages } from "../../message.js";

/** A kit as a whole, its answer sheets and its page of places. */
export const kitEnglish = {
  "kit.title": "How to keep what you buy",
  "kit.page": "Page {page} of {pages}",
  "kit.sources": "Where this comes from",
  "kit.foot":
    "{title}. Worked out by Keepwright. Spans of days are likely, not sure. Check with your local food-safety authority.",
  "kit.host": "For the host",
  "kit.invented": "Made up for this class: no real home.",

  "answer.where": "Where",
  "answer.how": "How",
  "answer.until": "How long",
  "answer.first": "Do first",
  "answer.range": "The days are a likely span, not a promise. Look, smell and feel.",
  "answer.kitchen": "Worked out for: {kitchen}.",

  "size.cut": "{centimetres} cm (1 inch)",

  "places.title": "Where it all goes",
  "places.subtitle": "To hang up on a wall",
  "places.heading": "{place} ({temperature})",
  "places.first": "{name}: {wrap}. {span}.",
  "places.ripening": "{name}: {wrap}, until ripe. Then “{next}”. {span} in all.",
  "places.ripe": "{name}, once ripe: {wrap}.",
  "places.group": "Group {number}, apart from the others here:",
  "places.groups":
    "Groups lie apart: gas or smell from one harms another. Give each its own drawer or shelf where you can.",
  "places.alone": "Each thing is looked at by itself here. In a full kitchen some may have to lie elsewhere.",
} as const satisfies Messages;
