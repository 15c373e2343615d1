/** Marks a child may choose as its own, drawn in `parts/HandMark.tsx`. They stand in for a name. */
export const HAND_MARKS = ['star', 'moon', 'fish', 'leaf', 'boat', 'sun'] as const;
export type HandMark = (typeof HAND_MARKS)[number];
