import { englishOf, remember } from './twins.ts';

/** What fills a template: words or numbers by name. Names that the template does not want are ignored. */
export type Values = Readonly<Record<string, string | number>>;

const NAME = /\{(\w+)\}/g;

/** The names a template wants, in order, each once. */
export const wants = (template: string): readonly string[] => [
  ...new Set(Array.from(template.matchAll(NAME), (m) => m[1] as string)),
];

const put = (template: string, value: (name: string) => string): string =>
  template.replace(NAME, (_, name: string) => value(name));

/**
 * Puts values into a template. Of a template in another tongue it is noted what it would be in English.
 *
 * @throws Error `Template "…" wants {x}, which is missing.` — a hole in a sentence is never shown.
 * @example fill('{grams} g {name}', { grams: 18, name: 'salt' }) // '18 g salt'
 */
export function fill(template: string, values: Values): string {
  const value = (name: string): string => {
    const found = Object.hasOwn(values, name) ? values[name] : undefined;
    if (found === undefined)
      throw new Error(`Template "${template}" wants {${name}}, which is missing.`);
    return String(found);
  };
  const filled = put(template, value);
  const english = englishOf(template);
  if (english !== null)
    remember(
      filled,
      put(english, (name) => englishOf(value(name)) ?? value(name)),
    );
  return filled;
}
