/** What a slab may say: its label, and the line under it. */
export interface SlabWords {
  readonly label: string;
  readonly then: string;
}

/** A value of the length that most have. */
const filled = (text: string): string => text.replace(/\{\w+\}/g, '12:30');

const found = (value: unknown): readonly Readonly<Record<string, unknown>>[] =>
  typeof value !== 'object' || value === null
    ? []
    : [value as Record<string, unknown>, ...Object.values(value).flatMap(found)];

/** Every text that the modules of words have for a slab, and every headline, which stands on a gate. */
export function slabWords(modules: readonly unknown[]): {
  readonly slabs: readonly SlabWords[];
  readonly headlines: readonly string[];
} {
  const all = modules.flatMap(found);
  const text = (value: unknown): value is string => typeof value === 'string';
  return {
    slabs: all.flatMap(({ slab, then }) =>
      text(slab) ? [{ label: filled(slab), then: text(then) ? filled(then) : '' }] : [],
    ),
    headlines: all.flatMap(({ headline }) => (text(headline) ? [filled(headline)] : [])),
  };
}
