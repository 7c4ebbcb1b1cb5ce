/** Undoing and doing again, and what each step is called. Names of steps are said within “Undo: {step}”. */
export const historyEnglish = {
  "history.label": "Undo and redo",
  "history.undo": "Undo",
  "history.redo": "Redo",
  "history.undoStep": "Undo: {step}",
  "history.redoStep": "Redo: {step}",
  "history.undone":
    "Undone: {step}. {left, plural, one {One more step can be undone.} other {# more steps can be undone.}}",
  "history.redone": "Done again: {step}.",
  "history.otherTab":
    "Another tab changed the list at the same moment. What it wrote is not lost: “Undo” brings it back.",
  "history.thisVisit":
    "This device keeps your list, but not the steps before it (its database is full or switched off): “Undo” works until you close the page.",
  "history.asides":
    "{count, plural, one {A record on this device could not be used in full. It was set aside as it was.} other {# records on this device could not be used in full. They were set aside as they were.}}",
  "history.toAsides": "See what was set aside",
  "step.typed": "{lines, plural, one {“{words}” typed} other {“{words}” and more, # lines in all, typed}}",
  "step.erased":
    "{lines, plural, one {“{words}” taken out} other {“{words}” and more, # lines in all, taken out}}",
  "step.rewritten":
    "{lines, plural, one {“{words}” rewritten} other {“{words}” and more, # lines in all, rewritten}}",
  "step.over another tab":
    "{lines, plural, one {“{words}” written over another tab} other {“{words}” and more, # lines in all, written over another tab}}",
  "step.corrected": "{words} changed",
  "step.left out": "{words} left out",
  "step.as read": "{words} put back as read",
  "step.own kitchen": "kitchen “{words}” described",
  "step.forget kitchen": "kitchen “{words}” forgotten",
  "step.chosen": "{words} put elsewhere",
  "step.released": "{words} left to the plan again",
  "step.kitchen": "another kitchen chosen",
  "step.people": "people changed",
  "step.days": "days to plan changed",
  "step.portions": "portions a day changed",
  "step.away": "days away changed",
  "step.units": "units changed",
  "step.language": "language changed",
  "step.region": "dates and numbers changed",
  "step.done": "ticked off",
  "step.not done": "tick taken off",
  "step.lying": "places of things changed",
  "step.cleared": "list emptied",
  "step.example": "example opened",
  "step.file": "saved file opened",
  "step.recovered": "other copy brought in",
  "step.went back": "going back",
  "step.from": "the day it came home changed",
  "step.class": "class pages changed",
  "step.missed": "a passed day marked as not done",
  "step.not missed": "a passed day marked as done",
  "step.other": "last change",
  "step.forgotten": "everything forgotten",
} as const;
