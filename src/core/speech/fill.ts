/** What fills a template: words or numbers by name. Names that the template does not want are ignored. */
export type Values = Readonly<Record<string, string | number>>;

const NAME = /\{(\w+)\}/g;

/** The names a template wants, in order, each once. */
export const wants = (template: string): readonly string[] => [
  ...new Set(Array.from(template.matchAll(NAME), (m) => m[1] as string)),
];

/**
 * Puts values into a template.
 *
 * @throws Error `Template "…" wants {x}, which is missing.` — a hole in a sentence is never shown.
 * @example fill('{grams} g {name}', { grams: 18, name: 'salt' }) // '18 g salt'
 */
export function fill(template: string, values: Values): string {
  return template.replace(NAME, (_, name: string) => {
    const value = Object.hasOwn(values, name) ? values[name] : undefined;
    if (value === undefined)
      throw new Error(`Template "${template}" wants {${name}}, which is missing.`);
    return String(value);
  });
}
