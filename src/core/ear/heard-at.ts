/** Samples a second of all that is heard. */
export const HEARD_AT = 16_000;
