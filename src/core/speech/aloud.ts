import { numberInWords, sayEnd, type Unit } from './numbers.ts';
import { timeInWords } from './times.ts';

/** Signs that stand behind a number on the screen, by what they are called in the air. */
const UNITS: Readonly<Record<string, Unit>> = {
  '°C': 'degree',
  '°F': 'degree Fahrenheit',
  '%': 'percent',
  g: 'gram',
  lb: 'pound',
  oz: 'ounce',
  h: 'hour',
  min: 'minute',
};
/** Lengths of the trade's own: whole numbers, never keyed in. */
const LENGTHS: Readonly<Record<string, string>> = { cm: 'centimetre', m: 'metre' };

const TIME = /\b\d{1,2}:\d\d(?: [ap]m)?\b/g;
const NUMBER = /(\d+(?:\.\d+)?)(?: ?(°C|°F|%|min\b|g\b|lb\b|oz\b|cm\b|m\b|h\b))?/g;

/** A span of whole numbers: its unit comes once, behind the second. */
const SPAN = /\b(\d{1,5}) to (\d{1,5}) ?(°C|°F)/g;
const DEGREES: Readonly<Record<string, string>> = { '°C': 'degrees', '°F': 'degrees Fahrenheit' };

/** A time that no clock shows is left for the eye. */
const time = (shown: string): string => {
  try {
    return timeInWords(shown);
  } catch {
    return shown;
  }
};

const number = (digits: string, sign: string | undefined): string => {
  const n = Number(digits);
  if (n > 99_999) return `${digits} ${sign ?? ''}`.trim();
  const length = sign === undefined ? undefined : LENGTHS[sign];
  if (length !== undefined) return `${numberInWords(n, null)} ${length}${n === 1 ? '' : 's'}`;
  return numberInWords(n, sign === undefined ? null : (UNITS[sign] as Unit), 2);
};

/**
 * A sentence with its digits and signs in words. What is said is mostly words already; a caution is
 * said as it is shown.
 *
 * @example aloud('Children stay 1 m back.') // 'Children stay one metre back.'
 * @example aloud('Your oven stops at 220 °C.') // 'Your oven stops at two hundred and twenty degrees.'
 */
export const aloud = (shown: string): string =>
  shown
    .replaceAll('\u00a0', ' ')
    .replace(/[“”]/g, '')
    .replace(/[−-](?=\d)/g, 'minus ')
    .replace(TIME, time)
    .replace(
      SPAN,
      (_, from: string, to: string, sign: string) =>
        `${sayEnd(Number(from))} to ${sayEnd(Number(to))} ${DEGREES[sign]}`,
    )
    .replace(NUMBER, (_, digits: string, sign?: string) => number(digits, sign))
    .replaceAll('°C', 'Celsius')
    .replaceAll('°F', 'Fahrenheit');
