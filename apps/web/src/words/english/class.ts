/** Pages for a class. */
export const classEnglish = {
  "class.title": "Pages for a class",
  "class.lead":
    "Say which kinds your class is about. You get answer sheets, a page of places, questions and more, for the kitchen and the people that you have set here.",
  "class.kinds": "Kinds, one a line",
  "class.large": "Large print",
  "class.make": "Make the pages",
  "class.working": "Making the pages …",
  "class.made": "{count, plural, one {One page is ready below.} other {# pages are ready below.}}",
  "class.wrong": "The pages could not be made: {problem}",
  "class.stopped": "it stopped before it was done.",
  "class.printAll": "Print them all",
  "class.printOne": "Print: {title}",
  "class.sources": "Where this comes from",
} as const;
