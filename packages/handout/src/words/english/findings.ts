import type { FindingCode, fileFindingCodes } from "@keepwright/planner";
import type { Messages } from "../message.js";

/** What a household says itself: what files say stands in `fileFindings`. */
type AccountCode = Exclude<FindingCode, (typeof fileFindingCodes)[number]>;

/** What is wrong with what was said, and what would work; {lot}, {line}, {phrase} and the like are what was written, in its quotes. */
export const findingWords = {
  "finding.account line not understood":
    "{line}: it is not understood. Write lines such as: ate 2 apples; threw out the spinach; avocados ripe; bought 1 lb peas; moved the kale to the shelf.",
  "finding.account words not understood":
    "{line}: {phrase} is not understood. Write lines such as: ate 2 apples; threw out the spinach; avocados ripe; bought 1 lb peas; moved the kale to the shelf.",
  "finding.account kind not known":
    "{line}: {phrase} names no kind of produce that is known. Write lines such as: ate 2 apples; threw out the spinach; avocados ripe; bought 1 lb peas; moved the kale to the shelf.",
  "finding.account which kind":
    "{line}: {phrase} may be more than one kind. Write which one is meant: {kinds}.",
  "finding.account kind not in plan":
    "{line}: {phrase} is not in the plan. Name one of: {kinds}; or write what came home as “bought …”.",
  "finding.account cut kind not in plan":
    "{line}: {phrase} is not in the plan. Name one of: {kinds}; or, where some of it is left after all, say when it was cut, for example: found 200 g melon cut 3 days ago.",
  "finding.account without age":
    "{line}: it is not told how old {phrase} is, and its safe time runs. Say when it was cut, for example: bought 200 g melon cut today; or: bought 200 g melon cut 2 days ago. What is left of what was here before is as old as that.",
  "finding.came home without age":
    "{phrase} came home: it is not told how old it is, and its safe time runs. Say how many days ago it was cut, or bought where it is sold ready to eat: “extraDays”, 0 for today. What is left of what was here before is as old as that.",
  "finding.account without amount":
    "{line}: {phrase} tells no amount. Say how much, for example: ate 200 g kale, or: half of the kale.",
  "finding.account of a day to come":
    "{line}: {phrase} tells of a day to come. Write what has happened by now; a day it is wanted for is told when it comes home.",
  "finding.account of a part":
    "{line}: {phrase} tells an amount, and this can be told of all of it only. Leave the amount out; or say of a part that it was eaten, given away or thrown out.",
  "finding.account day not clear":
    "{line}: it is not clear since which day, in {phrase}. Write the day as: cut the melon 2 days ago, or: cut the melon on 2026-06-14.",
  "finding.account without a known place":
    "{line}: {phrase} names no place of the kitchen. Name one of: {places}.",
  "finding.account without hours":
    "{line}: it is not told for how many hours. Write: left the melon out for 2 hours.",
  "finding.account without since":
    "{line}: it is not told since when, or for how many hours. Write: left the kale on the counter since yesterday, or: left the melon on the counter for 2 hours.",
  "finding.account of what is not so":
    "{line}: it says what is not so. Write what is so: kale still good; avocados unripe.",
  "finding.account of both":
    "{line}: it says what is so and what is not in one line. Write a line for each thing.",
  "finding.account of its look":
    "{line}: it says how it looks, and not whether it is still eaten. Write: lettuce still good; or: threw out the lettuce.",
  "finding.no such lot": "{lot}: there is no such lot in the haul. Name one of: {lots}.",
  "finding.lot of several kinds": "{lot}: it may be more than one kind of the haul. Name one of: {lots}.",
  "finding.day not between":
    "{lot}: {date} is not between the plan's first day and now. Write a day from {from} to {on}, as year-month-day.",
  "finding.day not of the calendar":
    "{lot}: {date} is no day of the calendar. Write a day from {from} to {on}, as year-month-day.",
  "finding.does not ripen":
    "{lot}: it does not ripen once picked. Take out how ripe it is; where it was looked at, say that it is still good.",
  "finding.came cut": "{lot}: it came cut. Take out that it was cut: its safe time runs already.",
  "finding.cut on which day":
    "{lot}: it is cut and lay out of the refrigerator by the plan; on which day it was cut is not told. Say the day, from {from} to {on}, as in: cut the melon today, or: cut the melon yesterday.",
  "finding.hours of what is whole":
    "{lot}: hours out of the refrigerator count for cut produce only. Say on which day it was cut, or take the hours out.",
  "finding.warm since when":
    "{lot}: it is cut and lies out of the refrigerator, since when is not told. Say for how many hours, as in: left the melon out for 1 hour; or since which day before today.",
  "finding.no such wrap":
    "{lot}: the kitchen has no {wrap}. Write one of: {wraps}; or add it to the kitchen's wraps.",
  "finding.no such place": "{lot}: place {place} is not in the kitchen. Name one of: {places}.",
  "finding.pieces not counted":
    "{lot}: {pieces} pieces, and its pieces were not counted when it came home. Give its weight or portions instead, for example: 200 g.",
  "finding.more eaten than there was":
    "{lot}: {grams} g eaten, and there were {there} g. Correct the amount; write “all” for all of it.",
  "finding.more thrown out than there was":
    "{lot}: {grams} g thrown out, and there were {there} g. Correct the amount; write “all” for all of it.",
  "finding.more given away than there was":
    "{lot}: {grams} g given away, and there were {there} g. Correct the amount; write “all” for all of it.",
  "finding.more frozen than there was":
    "{lot}: {grams} g frozen, and there were {there} g. Correct the amount; write “all” for all of it.",
  "finding.more left than there was":
    "{lot}: {grams} g left, and there were {there} g. Correct the amount, or write what came home since as “bought …”.",
  "finding.more cut left than there was":
    "{lot}: {grams} g left, and there were {there} g. Correct the amount. If there is more besides, say when it was cut, for example: bought 200 g melon cut today.",
  "finding.eaten by the plan":
    "{lot}: something is told of it, yet by the plan all of it is eaten by now. Say how much is left (“200 g of {name} left”), or that it is eaten (“ate all the {name}”).",
  "finding.today not of the calendar":
    "The day it is now: “{on}” is no day of the calendar. Write a day as year-month-day, for example 2026-06-13.",
  "finding.today before the plan":
    "The day it is now: {on} is before the plan's first day, {from}. Give a day from {from} on.",
  "finding.today long after the plan":
    "The day it is now: {on} is {days} days after the plan's first day, {from}. Carry a plan on within {most} days; after that, plan what is there anew.",
  "finding.plan over":
    "Days to plan for: the earlier plan ended after {days} days. Say how many days to plan for from now on, 1 to 28.",
  "finding.days to plan for": "Days to plan for: {days}. Say how many days to plan for from now on, 1 to 28.",
  "finding.nothing left":
    "What is left: nothing, and nothing came home. There is nothing to plan: make a new plan when something comes home.",
  "finding.wanted on no day":
    "{lot}: it is wanted for {day}, which is no day of the calendar. Give a day from {from} to {last}, or leave the day out.",
  "finding.wanted before the first day":
    "{lot}: it is wanted for {day}, which is before the first day. Give a day from {from} to {last}, or leave the day out.",
  "finding.wanted too far ahead":
    "{lot}: it is wanted for {day}, which is more than {most} days ahead. Give a day from {from} to {last}, or leave the day out.",
} as const satisfies Messages & Record<`finding.${AccountCode}`, string>;
