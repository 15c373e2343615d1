import { describe, expect, it } from 'vitest';
import { learnedEngine, LEARNED, type Nets } from '../../../src/adapters/ear/learned-engine.ts';
import { plainEngine } from '../../../src/adapters/ear/plain-engine.ts';
import { MEANS, SPREADS } from '../../../src/adapters/ear/whitening.ts';
import { HEARD_AT, MARGIN, type Cut } from '../../../src/core/ear/listener.ts';
import { openNets } from '../../bench/ear/nets.ts';
import { joined, quiet, tone } from '../../core/ear/support/sounds.ts';

const sound = joined(quiet(0.35), tone(0.5, 700), quiet(0.35));
const cut: Cut = { sound, lead: MARGIN, room: -60, long: false };

/** Nets that make known numbers: of sound `rows` rows, and of each window MEANS and one SPREAD in one place. */
function told(rows: number) {
  const asked: { pcm: Float32Array | null; batch: Float32Array | null; count: number } = {
    pcm: null,
    batch: null,
    count: 0,
  };
  const nets: Nets = {
    mel: (pcm) => {
      asked.pcm = pcm;
      return Promise.resolve(
        Float32Array.from({ length: rows * 32 }, (_, i) => 10 * Math.floor(i / 32)),
      );
    },
    embed: (batch, count) => {
      Object.assign(asked, { batch, count });
      const row = (n: number) => MEANS.map((mean, i) => mean + (i === n ? 2 * SPREADS[i]! : 0));
      return Promise.resolve(joined(...Array.from({ length: count }, (_, n) => row(n))));
    },
  };
  return { nets, asked };
}

it('asks the net for a window of 76 rows every 8, as it was taught', async () => {
  const { nets, asked } = told(76 + 8 + 8 + 7);
  await learnedEngine(nets).saying(cut);
  expect(asked.count).toBe(3);
  expect(asked.batch).toHaveLength(3 * 76 * 32);
  // The rows are told from each other by their numbers: the first of each window.
  expect([0, 1, 2].map((n) => asked.batch![n * 76 * 32])).toEqual([2, 10, 18]);
  expect(Math.max(...asked.pcm!)).toBeCloseTo(Math.max(...sound) * 32_767, 0);
});

it('each of its numbers weighs the same, and a row is one long', async () => {
  const { learned, plain } = await learnedEngine(told(76 + 8).nets).saying(cut);
  expect([learned!.count, learned!.size]).toEqual([2, LEARNED]);
  expect(learned!.data[0]).toBeCloseTo(1, 4);
  expect(learned!.data[LEARNED + 1]).toBeCloseTo(1, 4);
  expect(Math.hypot(...learned!.data)).toBeCloseTo(Math.SQRT2, 4);
  expect(plain).toEqual((await plainEngine.saying(cut)).plain);
});

it('a saying that is shorter than a window has no learned frames, and that is no fault', async () => {
  const { nets, asked } = told(75);
  const { learned } = await learnedEngine(nets).saying(cut);
  expect(learned).toEqual({ count: 0, size: LEARNED, data: new Float32Array() });
  expect(asked.batch).toBeNull();
});

it('a net that cannot be run is told', async () => {
  const { nets } = told(90);
  const broken = { ...nets, embed: () => Promise.reject(new Error('no')) };
  await expect(learnedEngine(broken).saying(cut)).rejects.toThrow('no');
});

it('what the whitening was made of is spread: no number is divided by nothing', () => {
  expect([MEANS.length, SPREADS.length]).toEqual([LEARNED, LEARNED]);
  expect(MEANS.every(Number.isFinite)).toBe(true);
  expect(SPREADS.every((spread) => spread > 1)).toBe(true);
});

describe('of a saying that has begun', () => {
  const counted = async () => {
    const nets = await openNets();
    const counts: number[] = [];
    const embed: Nets['embed'] = (batch, count) => {
      counts.push(count);
      return nets.embed(batch, count);
    };
    return { engine: learnedEngine({ ...nets, embed }), counts };
  };
  const long = joined(quiet(0.4), tone(0.5, 700, 3), quiet(0.15), tone(0.6, 300, 4), quiet(0.4));
  const its: Cut = { ...cut, sound: long };
  const until = (seconds: number) => long.subarray(0, seconds * HEARD_AT);

  it('makes only the rest once it is there, and the very same numbers', async () => {
    const { engine, counts } = await counted();
    const whole = await engine.saying(its);
    const first = await engine.ahead!(until(1), null);
    const second = await engine.ahead!(until(1.8), first);
    expect(await engine.saying(its, second)).toEqual(whole);
    expect(counts).toHaveLength(4);
    expect(counts[1]! + counts[2]! + counts[3]!).toBe(counts[0]);
    expect(counts[3]).toBeLessThanOrEqual(4);
  });

  it('makes all of it anew where it went on otherwise, and where nothing was made yet', async () => {
    const { engine, counts } = await counted();
    const whole = await engine.saying(its);
    const other = await engine.ahead!(joined(quiet(0.4, 0.01, 9), until(1)), null);
    expect(await engine.saying(its, other)).toEqual(whole);
    expect(counts[2]).toBe(counts[0]);
    const tooShort = await engine.ahead!(until(0.5), null);
    expect(await engine.saying(its, tooShort)).toEqual(whole);
  });
});
