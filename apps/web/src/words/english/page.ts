/** Name, notices and the words that every screen shares. */
export const pageEnglish = {
  "page.name": "Keepwright",
  "page.lead": "Where everything goes, how to keep it, and what to eat first.",
  "page.private": "Worked out on this device. Nothing is sent anywhere.",
  "page.opening": "Opening the list of kinds…",
  "page.noFigures":
    "The figures of the kinds could not be loaded. What you typed is kept on this device: open the page again when it can be reached.",
  "page.notKept":
    "This device would not keep your list (its storage is full or switched off). It stays on this page until you close it; copy the text to keep it.",
  "page.newer": "A newer version of this page is ready. What you typed stays.",
  "page.takeNewer": "Open the newer version",
  "number.wrong": "“{typed}” will not do. Write a whole number from {least} to {most}.",
  "screens.label": "Screens",
  "screen.unpack": "Unpack",
  "screen.kitchen": "My kitchen",
  "screen.mine": "As I have it",
  "screen.ways": "Two ways",
  "screen.ask": "Ask",
  "screen.class": "For a class",
  "screen.settings": "Settings",
  "screen.title": "{screen} · Keepwright",
  "screen.opening": "Opening …",
} as const;
