import type { Messages } from "../message.js";

/** Why a lot lies where it does: beside other places and wraps, and what its neighbours do to it. */
export const whyWords = {
  "heading.why": "Why there, and not elsewhere",
  "why.here": "{name}: “{place}” ({wrap}). {span}, ended by {ending}.",
  "why.hereRipe":
    "{name}: “{first}” until ripe ({firstWrap}), then “{place}” ({wrap}). {span}, ended by {ending}.",

  // Other places and wraps
  "why.elsewhere": "{place} ({wrap}): {span}, ended by {ending}.",
  "why.elsewhereRipe": "{first} until ripe ({firstWrap}), then {place} ({wrap}): {span}, ended by {ending}.",
  "why.wrap": "Wrapped another way ({wrap}): {span}, ended by {ending}.",
  "why.wrapRipe": "Wrapped another way ({firstWrap} until ripe, then {wrap}): {span}, ended by {ending}.",
  "why.ground.no room": "There is no room.",
  "why.ground.not ripe": "No ripening there.",
  "why.ground.ready later": "Ready to eat later.",
  "why.ground.lasts less": "A shorter life.",
  "why.ground.eating spoilt": "It is worse to eat there: {effects}.",
  "why.ground.smell": "A smell is taken up from {givers}.",
  "why.ground.harms others": "Others lose by it: {names}.",
  "why.ground.lasts longer": "A longer life.",
  "why.ground.more to do": "More to do.",
  "why.ground.hardly matters": "All in all it hardly makes a difference.",
  "why.ground.better": "All in all a little better, by these figures. The search did not find it.",
  "why.costs": "All in all it costs as much as {grams} of waste.",
  "why.terms": "That is {terms}.",
  "why.term.waste.more": "{grams} more waste",
  "why.term.waste.less": "{grams} less waste",
  "why.term.qualityLost.more": "less good eating (as bad as {grams} of waste)",
  "why.term.qualityLost.less": "better eating (as good as {grams} saved)",
  "why.term.lifeLost.more": "life lost (as bad as {grams} of waste)",
  "why.term.lifeLost.less": "life won (as good as {grams} saved)",
  "why.term.effort.more": "more work or haste (as bad as {grams} of waste)",
  "why.term.effort.less": "less work or haste (as good as {grams} saved)",
  "why.there.neighbours": "Neighbours take {span} there.",
  "why.there.gas": "The ripening gas of {name} takes {span} there.",
  "why.there.damp": "The damp from {name} takes {span} there.",

  // Neighbours
  "why.neighbour": "For a typical lot: without {name} in the kitchen {span} instead of {now}.",
  "why.means.gas": "That is ripening gas (ethylene), not damp.",
  "why.means.damp": "That is damp, not ripening gas (ethylene).",
  "why.means.both": "Ripening gas (ethylene) takes {gas} of that, damp {damp}.",
  "why.means.gasButDamp":
    "Without the ripening gas (ethylene) alone it would be {gas} more; the damp that comes off saves {damp}.",
  "why.means.dampButGas":
    "Without the damp alone it would be {damp} more; the ripening gas (ethylene) saves {gas}.",
  "why.helper":
    "For a typical lot: without {name} in the kitchen only {span} instead of {now}. The damp that comes off helps.",
  "why.helperOther": "For a typical lot: without {name} in the kitchen only {span} instead of {now}.",
  "why.noNeighbours": "For a typical lot: with no neighbour at all {span} instead of {now}.",
  "why.joint": "The neighbours act together: what each takes by itself does not add up to what they take.",
  "why.nobody": "No neighbour does much to it.",
  "why.theRest": "the rest of it",

  // Rules
  "why.rule.cut out of refrigerator":
    "Not {things}: cut produce goes into the refrigerator at once (common practice, no source).",
  "why.rule.cut out of refrigerator.sourced":
    "Not {things}: cut produce goes into the refrigerator at once. Source: {source}.",
  "why.rule.does not stand in water":
    "Not {things}: it takes up little that way (common practice, no source).",
  "why.rule.does not stand in water.sourced": "Not {things}: it takes up little that way. Source: {source}.",
  "why.rule.cut uncovered":
    "Not {things}: what is cut or washed ready to eat is covered well (common practice, no source).",
  "why.rule.must breathe": "Not {things}: it has to breathe (common practice, no source).",
  "why.rule.keep dry": "Not {things}: it is kept dry (common practice, no source).",
  "why.rule.memory": "{citation} (from memory)",
} as const satisfies Messages;
