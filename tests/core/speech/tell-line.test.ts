import { afterEach, expect, it } from 'vitest';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { tellLine } from '../../../src/core/speech/tell-line.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { weighDough } from '../../../src/core/formula/weigh-dough.ts';

afterEach(() => speakIn('en'));

const AMOUNTS = {
  flours: [{ id: 'wheat', name: 'wheat flour', grams: 500 }],
  fillings: [{ id: 'oats', name: 'oats', grams: 50 }],
  soakers: [{ id: 'oats', grams: 60 }],
  firstWater: 350,
  secondWater: 20,
  levain: 100,
  salt: 10,
  dough: 1090,
};
const names = (): string[] => {
  const { first, second, filling } = weighDough(AMOUNTS as never).lines;
  return [...first, ...second, ...filling].map(tellLine);
};

it('tells each line in the tongue that stands', () => {
  const english = names();
  expect(english).toEqual(
    'wheat flour,water,levain,salt,second water,oats,water for oats'.split(','),
  );
  speakIn('de', de);
  expect(names()).toEqual(
    'wheat flour,Wasser,Sauerteig,Salz,zweites Wasser,oats,Wasser für: oats'.split(','),
  );
  expect(tellLine({ item: 'seed', name: 'starter' })).toBe('Anstellgut');
  speakIn('fr', fr);
  expect(names().slice(1, 5)).toEqual(['eau', 'levain', 'sel', 'bassinage']);
});

it('keeps the names in English', () => {
  const english = weighDough(AMOUNTS as never);
  speakIn('de', de);
  expect(weighDough(AMOUNTS as never)).toEqual(english);
});
