/**
 * Words and phrases, folded, for a piece of which some has been eaten: what is left of it is cut. Of a bag or a bunch that was begun they say
 * nothing: its pieces are whole.
 */
export const begunPhrases: readonly string[] = [
  ..."begun started opened open".split(" "),
  ...[
    "already begun",
    "already started",
    "already opened",
    "just opened",
    "half eaten",
    "half used",
    "half gone",
  ],
  ...[
    "half finished",
    "partly eaten",
    "part eaten",
    "partly used",
    "part used",
    "partially eaten",
    "partially used",
  ],
  ...["rest of a", "rest of one", "remains of a", "remainder of a", "end of a"],
  ...[
    "what is left of a",
    "whats left of a",
    "what is left of the",
    "whats left of the",
    "what remains of a",
  ],
  ...[
    "empezado",
    "empezada",
    "empezados",
    "empezadas",
    "comenzado",
    "comenzada",
    "abierto",
    "abierta",
    "abiertos",
    "abiertas",
  ],
  ...["ya empezado", "ya empezada", "ya abierto", "ya abierta", "a medias", "a medio comer", "a medio usar"],
  ...["partido", "partida", "partidos", "partidas", "partido por la mitad", "partida por la mitad"],
  ...[
    "resto de un",
    "resto de una",
    "lo que queda de un",
    "lo que queda de una",
    "lo que queda del",
    "lo que queda de la",
  ],
  ...[
    "lo que quedo de un",
    "lo que quedo de una",
    "lo que sobro de un",
    "lo que sobro de una",
    "sobras de un",
    "sobras de una",
  ],
];

/** Words and phrases, folded, for what is left of something: it is cut, and how much of it there is is not known. */
export const leftoverPhrases: readonly string[] = [
  ..."leftover leftovers sobra sobras sobrante sobrantes sobrado sobrada restos".split(" "),
  ...[
    "left over",
    "left overs",
    "remains of",
    "remnants of",
    "scraps of",
    "bits of",
    "rest of my",
    "rest of the",
  ],
  ...["leftovers of", "leftovers from", "que sobro", "que quedo", "resto del", "resto de la"],
];
