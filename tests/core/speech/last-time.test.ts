import { describe, expect, it } from 'vitest';
import type { LastNote } from '../../../src/core/log/last-note.ts';
import type { LoafChange } from '../../../src/core/log/loaf-names.ts';
import { LOAF_CAUSES } from '../../../src/core/log/loaf-names.ts';
import { loafChanges } from '../../../src/core/speech/words/cut-loaf.ts';
import {
  lastTimeLooked,
  lastTimeNoted,
  thisTime,
} from '../../../src/core/speech/words/last-time.ts';
import { notes } from '../../../src/core/speech/words/note.ts';
import { sayLastTime, showLastTime } from '../../../src/core/speech/tell-last-time.ts';
import { sentencesOf, wordsOf } from './support/catalogue.ts';
import { grade } from './support/grade.ts';

const CHANGES = [...(Object.keys(loafChanges) as LoafChange[]), null];
const EVERY: readonly LastNote[] = [
  ...LOAF_CAUSES.flatMap((was) => CHANGES.map((change) => ({ from: 'cut', was, change }) as const)),
  ...notes.flatMap(({ value: was }) =>
    CHANGES.map((change) => ({ from: 'note', was, change }) as const),
  ),
];

describe('what is said of the last bake', () => {
  it('has a sentence for every cause, note and change, and no other', () => {
    expect(Object.keys(lastTimeLooked).sort()).toEqual([...LOAF_CAUSES].sort());
    expect(Object.keys(lastTimeNoted)).toEqual(notes.map(({ value }) => value));
    expect(Object.keys(thisTime).sort()).toEqual(Object.keys(loafChanges).sort());
  });

  it('is two sentences of at most twelve words, what it was and what to do, and reads easily', () => {
    expect(EVERY.length).toBe((LOAF_CAUSES.length + notes.length) * CHANGES.length);
    for (const note of EVERY) {
      const told = sayLastTime(note)!;
      const sentences = sentencesOf(told);
      expect(sentences, told).toHaveLength(2);
      for (const one of sentences) expect(wordsOf(one).length, one).toBeLessThanOrEqual(12);
      expect(told).toMatch(/^Last time .*\. (This time|Do it the same way)/);
      expect(showLastTime(note)).toBe(told);
    }
    expect(grade(EVERY.map((note) => sayLastTime(note)!))).toBeLessThanOrEqual(6);
  });

  it('is never said where the baker wrote it: it is shown as it stands', () => {
    const note = { from: 'own', words: 'Less {water}, more time' } as const;
    expect(sayLastTime(note)).toBeNull();
    expect(showLastTime(note)).toBe('Last time: “Less {water}, more time”');
  });
});
