import { afterEach, describe, expect, it } from 'vitest';
import { EAR_PHRASES } from '../../src/core/ear/phrases.ts';
import type { EarShown } from '../../src/core/ear/shown.ts';
import { speakIn, TONGUES } from '../../src/core/speech/tongue.ts';
import { de } from '../../src/core/speech/de.ts';
import { fr } from '../../src/core/speech/fr.ts';
import { heardWords, isLost } from '../../src/screens/heard-words.ts';

afterEach(() => speakIn('en'));

const STATES = ['shut', 'open', 'speaks', 'tiles', 'denied', 'none', 'gone', 'failed'] as const;
const none = (state: EarShown['state']): EarShown => ({ state, active: [] });

describe.each(TONGUES)('the ear beside an act, %s', (tongue) => {
  const there = () => speakIn(tongue, tongue === 'fr' ? fr : tongue === 'de' ? de : {});

  it('tells each of its states in words of its own', () => {
    there();
    const told = STATES.map((state) => heardWords({ state, active: ['done'] }).text);
    expect(new Set(told).size).toBe(STATES.length);
  });

  it('names whatever may be said, one by one, and digits together', () => {
    there();
    const told = EAR_PHRASES.map((phrase) => heardWords({ state: 'open', active: [phrase] }).text);
    const digits = heardWords({ state: 'open', active: ['zero'] }).text;
    expect(told.filter((text) => text === digits)).toHaveLength(11);
    expect(new Set(told).size).toBe(EAR_PHRASES.length - 10);
  });

  it('has one word for each where words are bigger', () => {
    there();
    for (const state of STATES) expect(heardWords(none(state)).short).toMatch(/^\S+$/);
  });
});

it('is lost where there is no microphone, and only there', () => {
  expect(STATES.filter(isLost)).toEqual(['denied', 'none', 'gone', 'failed']);
});
