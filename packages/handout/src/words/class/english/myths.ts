import type { Messages } from "../../message.js";

/** Common advice that the evidence does not bear out, told kindly. */
export const mythsEnglish = {
  "myths.title": "Is it true?",
  "myths.subtitle": "Things we have all been told",
  "myths.intro":
    "All of us learn these from people we trust. Here is what the tests say, and where it comes from.",
  "myths.none": "None of the sayings we know of bears on these foods and topics.",
  "myths.said": "“{said}”",
  "myths.true": "What is true: {text}",
  "myths.why": "Why people think so: {text}",
  "myths.figure": "source",

  "myth.cold-tomato.said": "Tomatoes belong in the refrigerator.",
  "myth.cold-tomato.true":
    "{count, plural, one {{names}: below about {degrees} the taste fades. # day is enough. Leave whole ones out. Once cut, they must go in the cold.} other {{names}: below about {degrees} the taste fades. # days are enough. Leave whole ones out. Once cut, they must go in the cold.}}",
  "myth.cold-tomato.why": "The cold does slow rot. For most other foods it is right.",

  "myth.cold-for-all.said": "All things keep best in the refrigerator.",
  "myth.cold-for-all.true":
    "Cold hurts some foods. They get spots or go soft. These are hurt below: {limits}.",
  "myth.cold-for-all.limit": "{name} {degrees}",
  "myth.cold-for-all.why": "Most leaves and berries do keep best there.",

  "myth.cold-banana.said": "Bananas must not go in the refrigerator.",
  "myth.cold-banana.true":
    "Green ones must not: they are hurt below about {degrees}. Ripe ones may. The peel turns brown, but the inside stays good for some days.",
  "myth.cold-banana.why": "A brown peel looks like a bad fruit.",

  "myth.cold-potato.said": "Potatoes keep well in the refrigerator.",
  "myth.cold-potato.true":
    "Cold makes them sweet. Below about {degrees} it shows in {span}, and they go dark when fried. A cool, dark place is better.",
  "myth.cold-potato.why": "Cold does hold back the sprouts.",

  "myth.ripens-later.said": "All fruit gets ripe if you wait.",
  "myth.ripens-later.true":
    "{names}: once picked, they get no more ripe. They may go soft, but not sweet. Buy them ready to eat.",
  "myth.ripens-later.why": "Pears and peaches do get ripe at home. It is easy to think that all fruit does.",

  "myth.cold-ripens.said": "Hard fruit gets ripe in the refrigerator, just more slowly.",
  "myth.cold-ripens.true":
    "{names}: in the cold they stop. Leave hard ones out. Put them in the cold once they are ripe.",
  "myth.cold-ripens.why": "Cold keeps ripe fruit good. So it seems right for hard fruit too.",

  "myth.gas.said": "Ripe fruit can lie next to all the rest.",
  "myth.gas.true":
    "{givers}: these give off ethylene, a ripening gas. Tests in homes found about {times} times as much of it where apples lay in the refrigerator. It takes days from these: {takers}.",
  "myth.gas.why": "The gas has no colour, and you cannot smell it.",

  "myth.wash-first.said": "Wash it all as soon as you get home.",
  "myth.wash-first.true": "{names}: wash these just before you eat them. Wet skin helps mould to start.",
  "myth.wash-first.why": "It is right to wash. Only the time is wrong.",

  "myth.soap.said": "Soap gets fruit and greens more clean.",
  "myth.soap.true": "Use running water and no soap. Rub firm ones with a clean brush.",
  "myth.soap.why": "Soap is good for hands and plates.",

  "myth.mould-soft.said": "Cut off the mould and eat the rest.",
  "myth.mould-soft.true":
    "{names}: these are soft. Throw the whole piece out, even for a small spot. Do not sniff it. Look at those next to it.",
  "myth.mould-soft.why": "We see just one spot, and no one likes to waste food.",

  "myth.mould-firm.said": "One spot of mould, and it all must go.",
  "myth.mould-firm.true":
    "{names}: these are firm. If they are whole and the spot is small, cut off at least {size} around and below it. Keep the knife out of the mould.",
  "myth.mould-firm.why": "For soft foods that is right.",

  "myth.looks-fine.said": "If it looks good and smells good, it is safe.",
  "myth.looks-fine.true":
    "{count, plural, one {{names}: once cut, germs can grow that you cannot see. Cover it, and keep it at {degrees} or less. Eat it that day.} other {{names}: once cut, germs can grow that you cannot see. Cover it, and keep it at {degrees} or less. Eat it in # days at most. The day you cut it is day 1.}}",
  "myth.looks-fine.why": "Old food often does look bad. Germs do not show.",

  "myth.fridge-cold.said": "My refrigerator feels cold, so it is cold enough.",
  "myth.fridge-cold.true":
    "One test of {homes} homes found that just {share} in 100 had a mean below {degrees}. That was in 1991. A newer one still found warm hours. Put in a thermometer. Aim for {limit} or less.",
  "myth.fridge-cold.why": "All air that comes out of it feels cold to the hand.",

  "myth.garlic-oil.said": "Garlic in oil is safe on the counter.",
  "myth.garlic-oil.true":
    "{count, plural, one {It can make you very ill. Put it in the cold at once. Use it in # day, or freeze it.} other {It can make you very ill. Put it in the cold at once. Use it in # days, or freeze it.}}",
  "myth.garlic-oil.why": "It looks and smells good for a long time.",

  "myth.green-potato.said": "A green potato is fine once it is peeled.",
  "myth.green-potato.true":
    "Green ones hold more of a poison. Cut out the green parts and the sprouts. If it is green all through, or tastes bitter, throw it out.",
  "myth.green-potato.why": "The green looks as if it were just in the peel.",

  "myth.onion-potato.said": "Onions make potatoes sprout.",
  "myth.onion-potato.true":
    "Onions give off next to no ripening gas. Tests of that gas on sprouts do not agree. It does no harm to keep the two apart.",
  "myth.onion-potato.why": "They often lie in one place, and both do sprout.",

  "myth.banana-crown.said": "Wrap the crown, and bananas last for days more.",
  "myth.banana-crown.true": "We know of no test that shows how much it helps. It does no harm.",
  "myth.banana-crown.why": "The ripening gas leaves at the crown, so it makes sense to try.",

  "myth.tops.said": "Roots stay fresh with the leaves on.",
  "myth.tops.true": "{names}: the leaves pull water out of the root. Twist them off.",
  "myth.tops.why": "Fresh leaves show that a root is fresh when you buy it.",
} as const satisfies Messages;
