import { soft } from '../core/speech/words/soft.ts';
import { unbroken } from './unbroken.ts';

/**
 * Words for what may be pressed, which is narrow: as `unbroken`, and a long one may end a line within itself.
 * @example softWords('Teigtemperatur') // in German with soft hyphens: 'Teig|tempe|ratur'
 */
export const softWords = (text: string): string => unbroken(soft.soften(text));
