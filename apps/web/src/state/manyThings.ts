/** So many things are told one below the other; of more, each is told in a line and the rest is one touch away. Declared preference, no source. */
export const mostOpen = 20;
