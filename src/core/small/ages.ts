/** Ages a child's task is fitted to; docs/small-hands.md says what each may do, and who says so. */
export const AGES = ['4-6', '7-9', '10-12'] as const;
export type Ages = (typeof AGES)[number];
