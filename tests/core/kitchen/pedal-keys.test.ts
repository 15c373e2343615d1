import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  doneBy,
  keyName,
  keyOf,
  mayTeach,
  PEDAL_DOES,
  teach,
  type PedalKeys,
} from '../../../src/core/kitchen/pedal-keys.ts';

describe('the keys of a pedal', () => {
  it('has one key do one thing: taught anew it leaves what it did before', () => {
    const once = teach(teach({}, 'done', 'PageDown'), 'takeBack', 'PageUp');
    expect(once).toEqual({ done: 'PageDown', takeBack: 'PageUp' });
    expect(teach(once, 'hush', 'PageDown')).toEqual({ hush: 'PageDown', takeBack: 'PageUp' });
    expect(teach(once, 'done', null)).toEqual({ takeBack: 'PageUp' });
    const any = fc.array(fc.tuple(fc.constantFrom(...PEDAL_DOES), fc.constantFrom('a', 'B', ' ')));
    fc.assert(
      fc.property(any, (lessons) => {
        const keys = lessons.reduce<PedalKeys>((so, [does, key]) => teach(so, does, key), {});
        expect(new Set(Object.values(keys)).size).toBe(Object.keys(keys).length);
        const [does, key] = lessons.at(-1) ?? [];
        if (does && key) expect(doneBy(keys, key)).toBe(does);
      }),
    );
  });

  it('knows a letter with its capital, and the bar by its name', () => {
    expect([doneBy({ done: 'b' }, 'B'), doneBy({ done: 'Space' }, ' ')]).toEqual(['done', 'done']);
    expect(doneBy({ done: 'b' }, 'c')).toBeNull();
    expect([keyOf('F5'), keyOf('B'), keyOf(' ')]).toEqual(['F5', 'b', 'Space']);
  });

  it('is not taught what types a number, holds another key or goes round the screen', () => {
    for (const key of ['5', '.', ',', 'Backspace', 'Tab', 'Shift', 'Control', 'Unidentified', ''])
      expect(mayTeach(key), key).toBe(false);
    // What presenters' clickers and page-turning pedals send. Common practice, no source.
    for (const key of ['PageUp', 'PageDown', 'ArrowLeft', ' ', 'Enter', 'b', 'F5', 'Escape'])
      expect(mayTeach(key), key).toBe(true);
  });

  it('writes a key in plain words', () => {
    expect(['PageDown', 'b', 'Space', 'ArrowLeft', 'F5'].map(keyName)).toEqual([
      'Page down',
      'B',
      'Space',
      'Arrow left',
      'F5',
    ]);
  });
});
