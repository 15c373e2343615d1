/** What a link to a formula has behind its address; what stands behind # is sent to no server. */
export const LINK_MARK = '#formula=';
/** Raised with the dictionary or the form: an older reader refuses a newer link by it. */
export const LINK_VERSION = 1;

/** Longest link that is made or read, letters, and most bytes it may unpack to. Judgement. */
export const LINK_LIMITS = { letters: 16_000, bytes: 100_000 } as const;

/**
 * Most modules a side of a code that a telephone reads off a tablet: at 117 (version 25, 1,273 letters)
 * and a code 100 mm wide one is 0.8 mm. Judgement.
 */
export const MOST_MODULES = 117;
