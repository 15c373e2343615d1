import { expect, it } from 'vitest';
import { directed, halved, levelled, moving, type Frames } from '../../../src/core/ear/frames.ts';

const frames = (size: number, ...data: readonly number[]): Frames => ({
  count: data.length / size,
  size,
  data: Float32Array.from(data),
});

it('a microphone that is louder, or colours, leaves no trace in what is levelled', () => {
  const said = frames(2, 1, 10, 3, 30, 5, 50);
  const other = frames(2, 101, -20, 103, -60, 105, -100);
  const [a, b] = [levelled(said), levelled(other)];
  const spread = Math.sqrt(8 / 3);
  expect([...a.data].filter((_, i) => i % 2 === 0)).toEqual(
    [-2 / spread, 0, 2 / spread].map(Math.fround),
  );
  for (let n = 0; n < 6; n += 2) expect(b.data[n]).toBeCloseTo(a.data[n]!, 5);
});

it('what never changes is level, and so is nothing', () => {
  expect([...levelled(frames(1, 7, 7, 7)).data]).toEqual([0, 0, 0]);
  expect(levelled(frames(3)).count).toBe(0);
});

it('a direction is one long, and none has none', () => {
  expect([...directed(frames(2, 3, 4, 0, 0)).data]).toEqual([0.6, 0.8, 0, 0].map(Math.fround));
});

it('where a sound goes stands beside where it is, flat at its ends', () => {
  const { count, size, data } = moving(frames(2, 0, 0, 2, 1, 4, 2, 6, 3, 8, 4));
  expect([count, size]).toEqual([5, 4]);
  const middle = [...data.slice(8, 12)];
  // Half the loudness, the column; then 8 and 4 over four frames, by as much as moves count.
  expect(middle).toEqual([2, 2, 8 * 1.2, 4 * 1.2].map(Math.fround));
  expect([...data.slice(0, 4)]).toEqual([0, 0, 4 * 1.2, 2 * 1.2].map(Math.fround));
});

it('halved rows are means of two, the odd one left out', () => {
  expect(halved(frames(1, 1, 3, 5, 7, 9))).toEqual(frames(1, 2, 6));
});
