import type { Messages } from "../message.js";

/** How things lie now, set beside the plan. */
export const judgementWords = {
  "judge.title": "As you have it, beside the plan, from {from} to {to}",

  "heading.unsafe": "Put this right first",
  "heading.asYouHaveIt": "As you have it",
  "heading.notTold": "What was not said",
  "heading.beside": "What it costs",
  "heading.conflicts": "What suffers most",
  "heading.lotByLot": "How long each lasts: as you have it, and in the plan",
  "heading.alsoSeen": "Also seen",

  // Safety, told first
  "judge.unsafe.cut out of refrigerator":
    "{name}: cut, and not in the refrigerator (“{place}”). Cold within two hours (one hour where it is hotter than 32 °C or 90 °F), or throw it away.",
  "judge.unsafe.cut too warm":
    "{name}: too warm in “{place}”, though it is in the refrigerator. It needs 5 °C (41 °F) or colder: move it to a colder place, or eat it within two hours.",
  "judge.unsafe.cut uncovered":
    "{name}: not covered. Cover it, so that nothing touches what is cut or ready to eat.",
  "judge.unsafe.greens in light":
    "{name}: in the light (“{place}”). Light makes green, bitter patches that can make people ill. Keep in the dark.",

  // Not told
  "judge.notTold.lots": "Put where a plan would put them beside the rest: {names}.",
  "judge.notTold.vents":
    "Nothing was said about these vents. They are taken as if nobody had touched them: {vents}.",
  "judge.ventAt.open": "“{place}” open",
  "judge.ventAt.half": "“{place}” half open",
  "judge.ventAt.closed": "“{place}” closed",

  // How it lies
  "judge.vent.open": "The vent is open.",
  "judge.vent.half": "The vent is half open.",
  "judge.vent.closed": "The vent is closed.",

  // What it costs
  "judge.waste":
    "Expected waste as you have it: {yours} ({yoursPortions}). With the plan: {plan} ({planPortions}).",
  "judge.wasteEqual": "As you have it and in the plan about the same should go to waste: {yours}.",
  "judge.wasteNeither": "Next to nothing should go to waste, as you have it or with the plan.",
  "judge.portions": "{count, plural, one {about # portion} other {about # portions}}",
  "judge.portions.little": "less than a portion",
  "judge.same": "All in all it is as good as the plan. Leave it as it is.",
  "judge.better": "All in all it is a little better than the plan that was found. Leave it as it is.",
  "judge.betterBut":
    "By these figures it is a little better than the plan, but it does what no plan would: see below and above.",
  "judge.quality": "It also tastes less good: that weighs as much as {grams} of waste.",

  // What suffers most
  "judge.worst.life": "{name}: {span} instead of {planned}, ended by {ending}.",
  "judge.worst.lifeLittle": "{name}: {span}, a little less than in the plan, ended by {ending}.",
  "judge.worst.not ripe": "{name}: no ripening there. With the plan: ready about {date}.",
  "judge.worst.eating": "{name}: it keeps long enough, but it is worse to eat there: {effects}.",
  "judge.worst.smell": "{name}: a smell is taken up from {givers}.",
  "judge.why.eating": "It is worse to eat, too: {effects}.",
  "judge.why.smell": "A smell is taken up, too, from {givers}.",
  "judge.why.waste": "Expected waste of it: {here} instead of {planned}.",
  "judge.why.onlyNeighbour": "With {name} as the only neighbour: {span}.",
  "judge.why.place": "No neighbour is to blame: it is the place, the wrap or the vent.",
  "judge.instead": "In the plan: “{place}” ({wrap}).",
  "judge.insteadPart": "In the plan, {name}: “{place}” ({wrap}).",
  "judge.insteadRipe": "In the plan: “{place}” until ripe ({wrap}), then “{next}” ({nextWrap}).",
  "judge.insteadRipePart": "In the plan, {name}: “{place}” until ripe ({wrap}), then “{next}” ({nextWrap}).",

  // Lot by lot
  "judge.lot": "{name}: {here}; {planned} in the plan.",
  "judge.lotSame": "{name}: {here}, in the plan too.",
  "judge.noRipening": "no ripening",

  // Also seen
  "judge.seen.unsuitable wrap":
    "{name}: {wrap} does not suit it (common practice, no source): some kinds must breathe or stay dry, and few stand in water.",
  "judge.seen.never moves": "{name}: to be moved when ripe, but no ripening there.",
} as const satisfies Messages;
