// How much is told one below the other; of more, each is told in a line and the rest is one touch away. Declared preferences, no source.

/** In a window that is not narrow: things. */
export const mostOpen = 20;

/**
 * In a narrow window: the first lines of what was understood, the things that last shortest, and what lies at one place. The first few stand open however
 * many follow, so that a thing more never makes the page shorter, and what stands open never shuts because of it.
 */
export const mostOpenNarrow = { lines: 4, lives: 2, entries: 2 } as const;
