/** Each slice of what is looked at or photographed is run by itself: `-t "wide, light"`. */
export const SLICES = (['wide', 'small', 'tall'] as const).flatMap((view) =>
  (['light', 'dark'] as const).map((theme) => [`${view}, ${theme}`, { view, theme }] as const),
);
export type Slice = (typeof SLICES)[number][1];
