import { cleanup, render, screen } from '@solidjs/testing-library';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { ReadyWindow } from '../../../src/parts/ReadyWindow.tsx';
import { spread } from '../../../src/core/log/chart/spread.ts';

afterEach(cleanup);

describe('spread', () => {
  it.each([
    ['labels with room stand under their marks', [20, 60, 90], [10, 10, 10], [15, 55, 85]],
    ['labels at the ends stay on the line', [0, 100], [10, 10], [0, 90]],
    ['labels on one place stand side by side about it', [50, 50], [20, 20], [28, 52]],
    ['a crowd at the end is pushed back', [98, 99, 100], [20, 20, 20], [32, 56, 80]],
    [
      'a crowd pushed together meets its neighbour',
      [30, 50, 50],
      [20, 20, 20],
      [28 / 3, 100 / 3, 172 / 3],
    ],
  ])('%s', (_, places, widths, lefts) => {
    spread(places, widths, 4, 100).forEach((left, i) => expect(left).toBeCloseTo(lefts[i]!, 6));
  });

  it('never lets labels collide or leave a line that holds them all', () => {
    const label = fc.record({
      place: fc.double({ min: 0, max: 700, noNaN: true }),
      width: fc.integer({ min: 1, max: 160 }),
    });
    fc.assert(
      fc.property(fc.array(label, { minLength: 1, maxLength: 4 }), (given) => {
        const labels = given.toSorted((a, b) => a.place - b.place);
        const lefts = spread(
          labels.map((l) => l.place),
          labels.map((l) => l.width),
          12,
          700,
        );
        lefts.forEach((left, i) => {
          expect(left).toBeGreaterThanOrEqual(-1e-6);
          const right = left + labels[i]!.width;
          expect(right).toBeLessThanOrEqual((lefts[i + 1] ?? 712) - 12 + 1e-6);
        });
      }),
    );
  });
});

const words = {
  now: 'now',
  earliest: 'earliest',
  likely: 'likely',
  latest: 'latest',
  alt: 'Ready between 12:55 and 13:50, likely about 13:25.',
};
const H = 3_600_000;
const hour = (at: number): string =>
  `${Math.floor(at / H)}:${String(Math.round((at % H) / 60_000)).padStart(2, '0')}`;
const show = (now: number, likely: number | null = 13.4 * H) =>
  render(() => (
    <ReadyWindow
      earliest={12.9 * H}
      likely={likely}
      latest={13.8 * H}
      now={now}
      hour={hour}
      words={words}
    />
  ));
const rows = (): string[] =>
  [...document.querySelectorAll('.window dl > div')].map((row) =>
    [...row.children].map((cell) => cell.textContent).join(' '),
  );

it('draws the span for eyes, says it for ears, and lists the same hours', () => {
  show(11 * H);
  expect(screen.getByRole('img', { name: words.alt })).toBeTruthy();
  expect(rows()).toEqual(['now 11:00', 'earliest 12:54', 'likely 13:24', 'latest 13:48']);
});

it('keeps the hours in the order of time when now has moved into the span', () => {
  show(13 * H);
  expect(rows()).toEqual(['earliest 12:54', 'now 13:00', 'likely 13:24', 'latest 13:48']);
});

it('names no one hour where none may be named', () => {
  show(11 * H, null);
  expect(rows()).toEqual(['now 11:00', 'earliest 12:54', 'latest 13:48']);
  expect(document.querySelector('.window-likely')).toBeNull();
});

it('tells each hour once: where an end and the likely hour are the same, the likely one', () => {
  const whole = (at: number): string => `${Math.round(at / H)}:00`;
  const shown = (likely: number | null, latest: number): string[] => {
    cleanup();
    const marks = { earliest: 13 * H, likely, latest, now: 13.4 * H };
    render(() => <ReadyWindow {...marks} hour={whole} words={words} />);
    return rows();
  };
  expect(shown(14 * H, 14 * H)).toEqual(['earliest 13:00', 'now 13:00', 'likely 14:00']);
  expect(shown(13 * H, 14 * H)).toEqual(['likely 13:00', 'now 13:00', 'latest 14:00']);
  expect(shown(13 * H, 13 * H)).toEqual(['likely 13:00', 'now 13:00']);
  expect(shown(null, 13 * H)).toEqual(['earliest 13:00', 'now 13:00']);
});

it('places now and the span on one line', () => {
  show(12 * H);
  const at = (name: string, key: string): string =>
    document.querySelector<HTMLElement>(name)!.style.getPropertyValue(key);
  expect(at('.window-now', '--at')).toBe('0%');
  expect(parseFloat(at('.window-span', '--from'))).toBeCloseTo(50, 6);
});
