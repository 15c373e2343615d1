import { afterEach, describe, expect, test } from 'vitest';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { aloud } from '../../../src/core/speech/aloud.ts';
import { clipId } from '../../../src/core/speech/clips.ts';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { inEnglish, speakIn } from '../../../src/core/speech/tongue.ts';
import { englishOfAll, remember } from '../../../src/core/speech/twins.ts';
import { utterancesOf } from '../../../src/core/speech/utterances.ts';
import { benchView } from '../../../src/screens/bench/view.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { Hand } from '../../machines/support/hand.ts';
import { WHOLE_BAKE } from '../../machines/support/walk.ts';

afterEach(() => speakIn('en'));

const units = { heat: 'C', weight: 'g' } as const;
const hour = (at: number): string => new Date(at).toISOString().slice(11, 16);
/** As the clips are found by it. */
const heard = (words: string): string => clipId(aloud(words));

describe.each([
  ['de', de],
  ['fr', fr],
] as const)('what is spoken in %s', (tongue, catalogues) => {
  test('is known in English at every stage of a bake, as English would have said it', () => {
    speakIn(tongue, catalogues);
    const hand = new Hand();
    const stages = new Set<string>();
    let other = 0;
    for (const [, act] of WHOLE_BAKE) {
      act(hand);
      const focus = focusOn(hand.kitchen, 'a');
      if (focus === null) continue;
      const spoken = (): string => {
        const view = benchView(hand.kitchen, focus, hour, null, units, EQUIPMENT);
        stages.add(view.stage);
        return [view.spoken, view.care].filter(Boolean).join(' ');
      };
      const words = spoken();
      const english = inEnglish(spoken);
      if (words !== english) other += 1;
      const clips = utterancesOf(words).map(englishOfAll).join(' ');
      expect(heard(clips), words).toBe(heard(english));
    }
    expect(stages.size).toBeGreaterThan(25);
    expect(other).toBeGreaterThan(25);
  });
});

test('joined sentences are found one by one, and what nobody noted is left out', () => {
  remember('Falte den Teig.', 'Fold the dough.');
  remember('Dann ruht er. Deck ihn zu.', 'Then it rests. Cover it.');
  expect(englishOfAll('Falte den Teig. Deck ihn zu.')).toBe('Fold the dough. Cover it.');
  expect(englishOfAll('Dann ruht er. Niemand weiß das. Falte den Teig.')).toBe(
    'Then it rests. Fold the dough.',
  );
  expect(englishOfAll('Niemand weiß das.')).toBe('');
});
