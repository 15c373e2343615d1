// @vitest-environment node
import { afterEach, describe, expect, it } from 'vitest';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { softWords } from '../../../src/parts/soft-words.ts';

afterEach(() => speakIn('en'));

const parted = (text: string): string =>
  softWords(text).replaceAll('\u00ad', '|').replaceAll('\u200b', '_').replaceAll('\u2011', '=');

describe('a long word of a press may end a line within itself', () => {
  it.each([
    ['Gassenbrot, selber Tag', 'Gassen|brot, selber Tag'],
    ['Teigtemperatur', 'Teig|tempe|ratur'],
    ['Kaltes Leitungswasser', 'Kaltes Leitungs|wasser'],
    ['Sauerteig-Temperatur', 'Sauer|teig-_Tempe|ratur'],
    ['Roggenvollkornmehl', 'Roggen|vollkorn|mehl'],
    ['Brot und Teig', 'Brot und Teig'],
    ['Schrank', 'Schrank'],
  ])('in German: %s', (text, want) => {
    speakIn('de', de);
    expect(parted(text)).toBe(want);
  });

  it.each([
    ['Annuler mes changements', 'Annuler mes chan|ge|ments'],
    ['Vue du boulanger', 'Vue du bou|lan|ger'],
    ['Rafraîchir', 'Ra|fraî|chir'],
    ['Moment', 'Moment'],
    ['Levain-chef de blé', 'Levain-_chef de blé'],
  ])('in French: %s', (text, want) => {
    speakIn('fr', fr);
    expect(parted(text)).toBe(want);
  });

  it('not in English', () =>
    expect(parted('A grown-up, Gassenbrot')).toBe('A grown=up, Gassenbrot'));
});
