/**
 * The name under which an ingredient stands in the cupboard, however it was written: small letters,
 * composed (NFC), trimmed, one blank between words. A name of nothing but blanks gives ''.
 *
 * @example
 * ingredientKey('  Sunflower   Seeds ') // → 'sunflower seeds'
 */
export const ingredientKey = (name: string): string =>
  name.normalize('NFC').toLowerCase().normalize('NFC').trim().replace(/\s+/gu, ' ');
