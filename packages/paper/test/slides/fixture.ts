import type { Deck } from "@keepwright/handout";

const long =
  "Put it into a perforated bag in the drawer with the closed vent, apart from what gives off ripening gas, and take out what is bruised before you close the bag.";

/** Invented: reaches every part of the looks, with texts that are too long for one slide and signs that markup would trip over. */
export const deck: Deck = {
  title: "How to keep <greens> & fruit",
  language: "es-419",
  words: {
    sources: "Fuentes",
    moreSources: "y más en las notas",
    goesOn: (title, number, of) => `${title} (${number} de ${of})`,
  },
  parts: [],
  slides: [
    {
      id: "opening",
      sort: "opening",
      title: "How to keep <greens> & fruit",
      subtitle: "Four kinds for a class of an hour",
      parts: [{ part: "text", text: "Made up for this class: no real home." }],
      notes: ["Say hello.", "Ask who threw something away this week."],
      sources: [],
    },
    {
      id: "kind",
      sort: "plain",
      title: "Romaine lettuces",
      parts: [
        {
          part: "pairs",
          rows: [
            { name: "Where", text: "The drawer with its vent closed" },
            { name: "How", text: "In a perforated bag, unwashed" },
            { name: "How long", text: "10 to 17 days" },
            { name: "Why", text: "It dries out first. Damp air keeps it crisp." },
          ],
        },
      ],
      chart: {
        chart: "bars",
        categories: ["Goes here: Right drawer", "Refrigerator shelves", "Counter †", "Cupboard"],
        series: [
          { name: "Goes here", fill: "full", values: [13, null, null, null] },
          { name: "† Not advised", fill: "hatched", values: [null, null, 1, null] },
          { name: "Other places", fill: "empty", values: [null, 4, null, 0] },
        ],
        axis: "Days until half are past their best",
        digits: 0,
        alt: "Bar chart: right drawer 13 days, shelves 4, counter 1, cupboard 0.",
      },
      notes: ["Romaine loses water through its leaves."],
      sources: [
        "An invented handbook, page 12 (page read)",
        "An invented paper, table 3 (from memory, not checked)",
      ],
    },
    {
      id: "long",
      sort: "plain",
      title: "A title that is so long that it has to be set smaller than the others, and goes over two lines",
      parts: [
        { part: "heading", text: "What to do" },
        {
          part: "list",
          mark: "dot",
          items: Array.from({ length: 9 }, (_, index) => `${index + 1}. ${long}`),
        },
        {
          part: "caution",
          lines: [
            "Cut fruit goes into the refrigerator within two hours.",
            "Follow your local food-safety authority.",
          ],
        },
      ],
      notes: ["Long."],
      sources: Array.from(
        { length: 12 },
        (_, index) => `Source ${index + 1}: an invented report with a long name, section ${index}`,
      ),
    },
    {
      id: "quiz",
      sort: "plain",
      title: "Question 1",
      subtitle: "Where do bananas that are still green go?",
      parts: [
        {
          part: "list",
          mark: "letter",
          items: ["On the counter", "Into the refrigerator", "Into a sealed bag"],
        },
      ],
      notes: ["Right: A. On the counter."],
      sources: [],
    },
    {
      id: "fates",
      sort: "plain",
      title: "What becomes of it",
      parts: [],
      chart: {
        chart: "parts",
        categories: ["Unsorted", "Planned"],
        series: [
          { name: "Eaten", values: [8.7, 10.1] },
          { name: "Lost", values: [1.6, 0.4] },
          { name: "Still good", values: [0.4, 0.2] },
        ],
        axis: "kg",
        digits: 1,
        alt: "Of 10.7 kg, 1.6 kg is lost unsorted and 0.4 kg planned.",
      },
      notes: ["The model's word."],
      sources: [],
    },
    {
      id: "lost",
      sort: "plain",
      title: "Lost by each evening",
      parts: [{ part: "text", text: "Most of it goes in the first three days." }],
      chart: {
        chart: "lines",
        categories: ["1", "2", "3", "4", "5"],
        series: [
          { name: "Unsorted", values: [0, 0.7, 1.1, 1.3, 1.6] },
          { name: "Planned", values: [0, 0.1, 0.1, 0.2, 0.4] },
        ],
        axis: "kg lost",
        digits: 1,
        alt: "Lines: unsorted rises to 1.6 kg, planned to 0.4 kg.",
      },
      notes: [],
      sources: [],
    },
    {
      id: "table",
      sort: "plain",
      title: "Thing by thing",
      parts: [
        {
          part: "table",
          head: ["Thing", "Unsorted", "Planned"],
          rows: Array.from({ length: 17 }, (_, index) => [
            `Kind ${index + 1}`,
            "gone: harm from cold",
            "good (Cupboard, upper shelf)",
          ]),
        },
      ],
      notes: [],
      sources: [],
    },
  ],
};
