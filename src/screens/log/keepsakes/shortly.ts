import { keepsakes } from '../../../core/speech/words/keepsakes.ts';
import { fill } from '../../../core/speech/fill.ts';

/** As many letters as a press shows. */
const MOST = 28;

/** A text as it stands on a press: its first line, no longer than there is room. */
export function shortly(text: string): string {
  const [line = '', ...others] = text.split('\n');
  const letters = [...line];
  if (letters.length <= MOST && others.length === 0) return line;
  const words = letters
    .slice(0, MOST)
    .join('')
    .replace(/[\s.,;:]+$/u, '');
  return fill(keepsakes.goesOn, { words });
}
