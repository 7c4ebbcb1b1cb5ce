import type { Messages } from "../message.js";

/** Days that things are wanted for, and what becomes of that. */
export const wishWords = {
  "heading.wishes": "Wanted for a day",

  "wanted.by": "by {date}",
  "wanted.on": "for {date}",
  "wanted.from": "not before {date}",
  "wanted.after": "after {date}",

  "wish.met": "{name}, wanted {wanted}: should be ready about {ready}, and still good when wanted.",
  "wish.metAlready": "{name}, wanted {wanted}: ready as it came, and should still be good then.",
  "wish.ripens too slowly":
    "{name}, wanted {wanted}: it will most likely not be ready in time. As planned it is ready about {ready}; by itself, in this kitchen, about {best} at the earliest.",
  "wish.neverReady": "{name}, wanted {wanted}: it will not get ripe in this kitchen.",
  "wish.keeps too short":
    "{name}, wanted {wanted}: it will hardly keep till then. Eat it on the days planned.",
  "wish.other things weigh more":
    "{name}, wanted {wanted}: the plan does not keep to it. It could, but more would be lost otherwise: other food, room, or days when nobody is at home.",
  "wish.chance": "Chance that it is as wanted: about {count} in 10. Fruit differs: look and feel.",
  "wish.chanceReady": "Chance that it is as wanted: about {count} in 10.",
  "wish.chanceHigh": "Chance that it is as wanted: more than 9 in 10.",
  "wish.chanceLittle": "Chance that it is as wanted: less than 1 in 10.",
  "wish.noRipening": "This kind does not ripen once it is picked: waiting makes it no riper than it came.",

  // In what was understood
  "lot.wanted.by": "{name}, wanted by {day}",
  "lot.wanted.on": "{name}, wanted for {day}",
  "lot.wanted.from": "{name}, not wanted before {day}",
  "lot.wanted.after": "{name}, wanted after {day}",
  "day.weekday": "{weekday}",
  "day.date": "{date}",
  "day.today": "today",
  "day.tomorrow": "tomorrow",
  "day.ahead": "the day {count} days from now",
} as const satisfies Messages;
