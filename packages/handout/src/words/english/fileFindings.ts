import type { fileFindingCodes } from "@keepwright/planner";
import type { Messages } from "../message.js";

/** What is wrong with a file, an arrangement, a kitchen or a row of a batch, and what would work; what was written stands in its quotes, names of fields as files have them. */
export const fileFindingWords = {
  "file.at": "{whole} {at}",
  "file.nothing": "nothing is given",
  "file.whole.kitchen": "kitchen",
  "file.whole.haul": "haul",
  "file.whole.arrangement": "arrangement",
  "file.whole.happened": "what happened",
  "file.whole.household": "household",
  "file.whole.plan": "plan",
  "file.whole.row": "row",
  "file.kind.string": "a text in quotes",
  "file.kind.number": "a number",
  "file.kind.int": "a whole number",
  "file.kind.boolean": "true or false",
  "file.kind.array": "a list in [ ]",
  "file.kind.object": "a group of fields in '{' '}'",
  "finding.arrangement empty":
    "How things lie: it is empty. Say where at least one thing lies, or how one vent is set.",
  "finding.lies said twice":
    "{lotNamed}: it is said {times} times where it lies. Say it once, or give each its “share”, together 1.",
  "finding.shares not whole":
    "{lotNamed}: its shares add up to {sum}. Say where all of it lies: the shares must add up to 1.",
  "finding.share too small":
    "{lotNamed}: a share is less than can lie apart. Give shares in steps of about {step}, or leave it in one place.",
  "finding.vent set twice": "Vent of {place}: it is set more than once. Say it once for each vent.",
  "finding.place without vent": "Vent of {place}: this place has no vent. Leave it out of the vents.",
  "finding.vent always so":
    "Vent of {place}: in this kitchen it is always {fixed}, and it is said to be {setting}. Write “{fixed}”, or let the kitchen file say that it can be set.",
  "finding.moves when ripe in vain":
    "{lotNamed}: it is to move when ripe, but it does not ripen any more. Give a day instead, or leave out “later”.",
  "finding.day beside when ripe": "{lotNamed}: a day stands beside “ripe”. Take out “day”.",
  "finding.day of move not given":
    "{lotNamed}: the day it moves is not given. Give “day”, a whole number from 1 to {last}: days after the first.",
  "finding.day of move too late":
    "{lotNamed}: day {asked} is not before day {days}, the end of what is looked at. Give “day”, a whole number from 1 to {last}: days after the first.",
  "finding.no day to move on": "{lotNamed}: only one day is looked at. Leave out “later”.",
  "finding.done but not needed":
    "{lotNamed}: {done} is said to be done, and there was nothing of it to do. Take it out of “done”.",
  "finding.nothing said of lot":
    "{lot}: nothing is said of it. Say what happened to it, for example “eaten”: “all”, or take it out.",
  "finding.left beside gone":
    "{lot}: “left” stands beside {fields}. Say either what is left or what is gone.",
  "finding.since alone":
    "{lot}: “since” stands alone. Say where it lies (“place”) or what is around it (“wrap”), or take “since” out.",
  "finding.vent cannot be set":
    "Vent of {place}: this place has no vent that can be set. Leave it out, or let the kitchen file say that it can be set.",
  "finding.warm refrigerator":
    "Refrigerator “{id}”: {celsius} °C. Set it to {value} °C ({fahrenheit} °F) or less: above that, food that can spoil dangerously is not safe for long.",
  "finding.place below freezing":
    "Place “{id}”: {celsius} °C. Some produce freezes there; check the thermometer.",
  "finding.counter unlike its room":
    "Place “{id}”: {celsius} °C in a room of {room} °C. A counter is usually as warm as its room; check both.",
  "finding.no refrigerator":
    "Kitchen: no place in a refrigerator. Cut produce cannot be kept safely without one; eat it at once.",
  "finding.haul empty": "The haul is empty. Add at least one kind of produce with its amount.",
  "finding.lot id twice": "Lot “{id}”: this id is used more than once. Give each lot its own id.",
  "finding.kind not in catalogue":
    "Lot “{id}”: kind “{kind}” is not in the catalogue. Look the kind up by name first, and use its id.",
  "finding.carried from another kitchen":
    "Lot “{id}”: place {place} is not in the kitchen. Give the kitchen the earlier plan was made for.",
  "finding.plan of another kitchen":
    "Plan: it was made for the kitchen {made}, and this is {here}. Give the plan with the haul and the kitchen it was made for.",
  "finding.plan without lot":
    "Plan, lot “{id}”: it is in the haul and not in the plan. Give the plan with the haul and the kitchen it was made for.",
  "finding.plan of other weight":
    "Plan, lot “{id}”: {planned} g in the plan, {there} g in the haul. Give the plan with the haul and the kitchen it was made for.",
  "finding.plan of other portions":
    "Plan, lot “{id}”: {planned} portions in the plan, {there} in the haul. Give the plan with the haul and the kitchen it was made for.",
  "finding.plan of another kind":
    "Plan, lot “{id}”: “{planned}” in the plan, “{there}” in the haul. Give the plan with the haul and the kitchen it was made for.",
  "finding.file kind of value": "{where}: {stands}. Give {valueKind}.",
  "finding.file one of": "{where}: {stands}. Write {choices}.",
  "finding.file too few": "{where}: {stands}. Name at least {least}.",
  "finding.file too many": "{where}: {stands}. Name {most} at most.",
  "finding.file too small": "{where}: {stands}. Write {least} or more.",
  "finding.file not above": "{where}: {stands}. Write a number above {least}.",
  "finding.file too big": "{where}: {stands}. Write {most} or less.",
  "finding.file text empty": "{where}: {stands}. Write something here; it may not be empty.",
  "finding.file text too long": "{where}: {stands}. Write it in {most} letters at most.",
  "finding.file no such field": "{where}: {stands}. Take out {keys}: no field has that name.",
  "finding.file day": "{where}: {stands}. Write a day as year-month-day, for example 2026-06-13.",
  "finding.file wanted day":
    "{where}: {stands}. Write a day of the week (“friday”), a date (“2026-06-19”), or whole days from the first day (0 to {most}).",
  "finding.file form":
    "{where}: {stands}. Write it in one of the forms that the guide to kitchens and hauls shows.",
  "finding.file other": "{where}: {stands}. Correct it: {why}.",
  "finding.haul not there":
    "The haul is empty. Write what came home, for example: 2 lb apples, a bunch of kale.",
  "finding.haul not understood":
    "Nothing in the haul was understood. Write amounts and names, for example: 2 lb apples, a bunch of kale.",
  "finding.list not there":
    "The list is empty. Write what you would like to buy, for example: 1 kg spinach, 3 heads romaine.",
  "finding.list not understood":
    "Nothing in the list was understood. Write amounts and names of what you would like to buy, for example: 1 kg spinach, 3 heads romaine.",
  "finding.question about it": "{question}",
  "finding.row not data":
    "Row: {text} is not valid JSON ({why}). Write one object of JSON a line, with the words of the haul under “haul”: see keepwright batch --help.",
  "finding.row kitchen not known":
    "Row, kitchen: {kitchen}. Give one of {keys}, or a whole kitchen as “keepwright kitchen ordinary --json” prints it.",
  "finding.row files not written":
    "Row: its files cannot be written ({fault}). Check the folder and the room on the disk, and give the same command again.",
} as const satisfies Messages & Record<`finding.${(typeof fileFindingCodes)[number]}`, string>;
