import { describe, expect, test } from 'vitest';
import { AGES } from '../../../src/core/small/ages.ts';
import { smallWords } from '../../../src/core/small/small-words.ts';
import { sentencesOf, textsOf, wordsOf } from '../speech/support/catalogue.ts';
import { grade } from '../speech/support/grade.ts';
import { STEPS } from './support/steps.ts';

const table = AGES.flatMap((ages) => STEPS.map((step) => [ages, step] as const));

describe.each(table)('to %s at %s', (ages, step) => {
  const { act, say, task, praise } = smallWords(ages, step);

  test('four texts are there, each as short as a child can hold', () => {
    expect(wordsOf(act).length, act).toBeLessThanOrEqual(5);
    expect(wordsOf(say).length, say).toBeLessThanOrEqual(9);
    expect(wordsOf(task).length, task).toBeLessThanOrEqual(9);
    expect(wordsOf(praise).length, praise).toBeLessThanOrEqual(7);
    expect(act).toMatch(/^[A-Z].*[a-z]$/);
    for (const text of [say, task, praise]) expect(text).toMatch(/^[A-Z].*\.$/);
    for (const text of [say, praise]) expect(sentencesOf(text), text).toHaveLength(1);
    expect(new Set([act, say, task, praise]).size).toBe(4);
  });

  test('no word is one a child does not hear in this kitchen, and none is a number of time', () => {
    for (const text of [act, say, task, praise]) {
      expect(text).not.toMatch(
        /levain|bulk|\bproo[fv]|retard|\blame\b|\bscor|laminat|hydrat|preshape|ferment|crumb|percent/i,
      );
      expect(text).not.toMatch(/\d|minute|\bhours?\b|\bseconds?\b|clock|[{}!]/i);
    }
  });

  test('what was done is named, nobody is hurried, judged or told to wait', () => {
    expect(praise).toMatch(/^You \w+/);
    expect(praise).not.toMatch(
      /\b(clever|smart|good|great|best|nice|super|proud|well|bright|big (girl|boy)|helper)\b(?! night)/i,
    );
    for (const text of [act, say, task, praise])
      expect(text).not.toMatch(
        /\b(hurry|quick\w*|fast\w*|late|soon|must|should|don’t|never|wrong|forgot|bad|naughty|wait\w*|only|win\w*|stars?|points|tast\w*|eat\w*|lick\w*|nibble)\b/i,
      );
  });
});

describe.each(AGES)('to %s', (ages) => {
  const all = STEPS.map((step) => smallWords(ages, step));
  const texts = all.flatMap(({ act, say, task, praise }) => [act, say, task, praise]);

  test('all of it reads at grade 3 or below, and so does each file and each kind', () => {
    expect(grade(texts)).toBeLessThanOrEqual(3);
    for (const kind of ['act', 'say', 'task', 'praise'] as const)
      expect(grade(all.map((words) => words[kind])), kind).toBeLessThanOrEqual(3);
    for (const part of ['', '-dough', '-oven', '-tasks'])
      expect(grade(textsOf(`small-${ages}${part}`)), part).toBeLessThanOrEqual(3);
    for (const text of texts) expect(grade([text]), text).toBeLessThanOrEqual(6);
  });

  test('no task is given twice, so none follows upon itself', () => {
    const tasks = all.map(({ task }) => task.toLowerCase());
    expect(tasks.filter((task, at) => tasks.indexOf(task) !== at)).toEqual([]);
  });
});
