/** In which ways the parts of a kitchen in a file contradict one another. */
export const contradictionsEnglish = {
  "agree.same id": "The id “{id}” is used more than once. Give each its own.",
  "agree.kitchen without a name": "The kitchen has no name that can be read. Give it one.",
  "agree.place without a name":
    "“{id}” has no name that can be read. Give it one: plans call it by its name.",
  "agree.same name": "“{id}” is called “{name}”, and so is another place. Give each its own name.",
  "agree.in no refrigerator":
    '“{id}” is a part of a refrigerator and is in none. Write which: "refrigerator".',
  "agree.not for a refrigerator":
    '“{id}” is nothing that is in a refrigerator, and stands in “{refrigerator}”. Leave "refrigerator" out, or give it another "kind".',
  "agree.unknown refrigerator":
    "“{id}” stands in “{refrigerator}”, which is not there. Write the id of a refrigerator of this kitchen.",
  "agree.vent without rates":
    '“{id}” has a vent, and not how much air it exchanges open, half open and closed. Give all three, or leave "vent" out.',
  "agree.rates without vent":
    '“{id}” has three air exchanges and no vent. Write "vent", or give one air exchange.',
  "agree.rates out of order":
    "“{id}” exchanges air {open}, {half} and {closed} times an hour open, half open and closed. Open is most and closed least: put them in that order.",
  "agree.place freezes":
    "“{id}” is at {celsius} °C, where fresh produce freezes. It needs {least} °C at least; else leave it out.",
  "agree.as warm as the room":
    "“{id}” is at {celsius} °C in a refrigerator, in a room of {room} °C. Inside it is colder: measure both again.",
  "agree.warmer than the room":
    "“{id}” is at {celsius} °C in a room of {room} °C. Nothing makes it more than {most} °C warmer: measure both again.",
  "agree.colder than the room":
    "“{id}” is a counter at {celsius} °C in a room of {room} °C. It has the air of its room: measure both again.",
  "agree.lit": '“{id}” is a dark cupboard and has light. Write "lit": false, or make it a counter.',
  "agree.more room than air":
    "The places in “{id}” have {room} L of room, and it has {litres} L of air. Correct the one or the other.",
  "agree.larger than the refrigerator":
    "“{id}” has {room} L of room, in a refrigerator of {litres} L. Correct the one or the other.",
  "agree.refrigerator as warm as the room":
    "“{id}” is at {celsius} °C in a room of {room} °C. A refrigerator is colder: correct one of the two.",
  "agree.refrigerator freezes":
    "“{id}” is at {celsius} °C: that is a freezer. Only fresh produce is planned for.",
  "agree.coil warmer than the air":
    "The cold surface in “{id}” is at {coil} °C and the air at {celsius} °C. The surface is colder: correct one of the two.",
} as const;
