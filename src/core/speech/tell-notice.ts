import { processParts, reasons, warnings } from './en/notices.ts';
import { fill } from './fill.ts';
import { showNumber } from './numbers.ts';
import type { Notice } from '../formula/notice.ts';

const templates: Readonly<Record<string, string>> = { ...reasons, ...warnings };
const parts: Readonly<Record<string, string>> = processParts;

/**
 * The sentence of a reason or a warning, its numbers shown with one decimal at most.
 *
 * @throws Error `No sentence for the notice x.`
 * @example tellNotice({ key: 'saltHigh', values: { salt: 2.75, most: 2.5 } })
 * // 'Salt is 2.8 %, over the usual 2.5. The dough will rise slowly.'
 */
export function tellNotice({ key, values }: Notice): string {
  const template = Object.hasOwn(templates, key) ? templates[key] : undefined;
  if (template === undefined) throw new Error(`No sentence for the notice ${key}.`);
  return fill(
    template,
    Object.fromEntries(
      Object.entries(values).map(([name, value]) => [
        name,
        typeof value === 'number'
          ? showNumber(value)
          : name === 'part'
            ? (parts[value] ?? value)
            : value,
      ]),
    ),
  );
}
