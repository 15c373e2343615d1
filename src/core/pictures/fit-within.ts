/**
 * Made so small that no side is longer than `most`, px; never larger, and no side of nothing.
 *
 * @example
 * fitWithin({ width: 4000, height: 3000 }, 1024) // → { width: 1024, height: 768 }
 */
export function fitWithin(
  { width, height }: { readonly width: number; readonly height: number },
  most: number,
): { readonly width: number; readonly height: number } {
  const by = Math.min(1, most / Math.max(width, height));
  const side = (px: number): number => Math.max(1, Math.round(px * by));
  return { width: side(width), height: side(height) };
}
