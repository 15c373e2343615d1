import { expect, it } from 'vitest';
import { askedAt } from '../../../src/core/small/adult-question.ts';
import { readings4 } from '../../../src/core/speech/words/small.ts';
import { MINUTE } from '../../../src/core/units.ts';

const COUNT = Object.keys(readings4).length;
const HOURS = 24 * 60;

it('asks every question, and has the right answer in every place about as often', () => {
  for (const missed of [0, 1]) {
    const places = [0, 0, 0, 0];
    const asked = new Set<number>();
    for (let minute = 0; minute < HOURS; minute += 1) {
      const { question, order } = askedAt(minute * MINUTE, missed, COUNT);
      asked.add(question);
      places[order.indexOf('right')]! += 1;
      expect([...order].sort()).toEqual(['one', 'right', 'three', 'two']);
    }
    expect(asked.size).toBe(COUNT);
    for (const times of places) expect(times / HOURS).toBeCloseTo(0.25, 1);
  }
});

it('has no question keep the place of its answer', () => {
  for (let question = 0; question < COUNT; question += 1) {
    const places = new Set<number>();
    for (let minute = 0; minute < HOURS; minute += 1) {
      const asked = askedAt(minute * MINUTE, 0, COUNT);
      if (asked.question === question) places.add(asked.order.indexOf('right'));
    }
    expect(places.size, String(question)).toBe(4);
  }
});

it('asks another one once the first was missed', () => {
  for (let minute = 0; minute < 60; minute += 1) {
    const [first, next] = [0, 1].map((missed) => askedAt(minute * MINUTE, missed, COUNT).question);
    expect(next).not.toBe(first);
  }
});

it('has all answers stand in what is read, the place of none telling which is right', () => {
  const at: number[] = [];
  for (const { text, answers } of Object.values(readings4)) {
    const stands = Object.values(answers).map((word) => text.indexOf(word));
    expect(Math.min(...stands), text).toBeGreaterThanOrEqual(0);
    at.push(stands.toSorted((a, b) => a - b).indexOf(text.indexOf(answers.right)));
  }
  expect(new Set(at).size).toBeGreaterThan(2);
});
