/** A kitchen outside this is a slip of the finger, °C. Judgement. */
export const KITCHEN = { least: 5, most: 40 } as const;
