/** What letters alone do not tell. */
const ODD: Readonly<Record<string, number>> = {
  hour: 2,
  hours: 2,
  flour: 2,
  dial: 2,
  pm: 2,
  quiet: 2,
  earlier: 3,
  earliest: 3,
  usual: 3,
  sesame: 3,
  celsius: 3,
  unusual: 4,
};

/**
 * Syllables of an English word by its vowel groups: a silent e at the end is not one, "le" and "re"
 * after a consonant are, and neither "-es" nor "-ed" counts unless it is heard. Right for nearly every
 * word of the kitchen, else one too many; numbers count their digits.
 *
 * @example syllables('centimetres') // 4
 */
export function syllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  if (letters === '') return Math.max(1, word.replace(/\D/g, '').length);
  const odd = ODD[letters];
  if (odd !== undefined) return odd;
  const heard = letters
    .replace(/^some/, 'som')
    .replace(/ine(?=t)/, 'in')
    .replace(/(?<=..)e(?=ly$)/, '')
    .replace(/([^aeioul])(?:le|led)$/, '$1il')
    .replace(/([^aeiou])re(s?)$/, '$1er$2')
    .replace(/([^tdr]|[^d]r)ed$/, '$1')
    .replace(/([aeiou])les$/, '$1ls')
    .replace(/([^aeioucglsxz]|[^cs]h)es$/, '$1')
    .replace(/([^aeiou])e$/, '$1');
  return Math.max(1, heard.match(/[aeiouy]+/g)?.length ?? 0);
}
