import { cutText } from '../../cut-text.ts';
import { plainText } from './plain-text.ts';

/** As a row of the circle takes them: UTF-16 units of one, and how many. */
const LETTERS = 120;
const MOST = 200;

/**
 * What a packet lists, typed as it stands there, one by one: parted by commas, semicolons and line ends,
 * but not within brackets.
 *
 * @example
 * splitParts('sugar, chocolate (cocoa, sugar); salt.') // → ['sugar', 'chocolate (cocoa, sugar)', 'salt']
 */
export function splitParts(text: string): readonly string[] {
  const parts: string[] = [''];
  let within = 0;
  for (const sign of text) {
    within = Math.max(0, within + (/[([{]/.test(sign) ? 1 : /[)\]}]/.test(sign) ? -1 : 0));
    if (within === 0 && /[,;\n]/.test(sign)) parts.push('');
    else parts[parts.length - 1] += sign;
  }
  return parts
    .map((part) => cutText(plainText(part).replace(/\.$/, ''), LETTERS).trim())
    .filter((part) => part !== '')
    .slice(0, MOST);
}
