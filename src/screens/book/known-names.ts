import { unparted } from '../../core/circle/label/packet-search.ts';
import { word } from './filling-kind.ts';
import type { KnownFilling } from './known-fillings.ts';

/** What bakers call those that are swapped for one another, in each of the tongues; judgement. */
const NAMES: Readonly<Partial<Record<KnownFilling, RegExp>>> = {
  walnut: word('walnuts?|noix(?! d(?:e |u |’))|walnüsse|walnu(?:ss|ß)'),
  hazelnut: word('hazelnuts?|noisettes?|haselnüsse|haselnu(?:ss|ß)'),
  sunflower: word('sunflowers?|tournesols?|sonnenblumen(?:kerne?)?'),
  pumpkin: word('pumpkins?|courges?|citrouilles?|potirons?|kürbis(?:kerne?)?'),
  sesame: word('sesame|sésame|sesam(?:saat)?'),
  raisin: word('raisins?|rosinen?'),
  apricot: word('apricots?|abricots?|(?:trocken|dörr)?aprikosen?'),
  olive: word('olives?|oliven?'),
};

/**
 * Whether a filling is one of the short list by the name that its baker gave it, in whichever tongue.
 *
 * @example
 * isCalled('toasted pumpkin seeds', 'pumpkin') // → true
 * isCalled('Kürbiskerne', 'pumpkin') // → true
 */
export const isCalled = (name: string, known: string): boolean =>
  Object.hasOwn(NAMES, known) && NAMES[known as KnownFilling]!.test(unparted(name));
