import { describe, expect, it } from 'vitest';
import {
  hearMoment,
  isPausing,
  MOST,
  newGate,
  PAUSE,
  type Gate,
  type Said,
} from '../../../src/core/ear/gate.ts';

/** Some moments of one loudness after another, dB of full; what was said, and whether anybody ever spoke. */
function heard(...parts: readonly (readonly [moments: number, db: number])[]) {
  let gate: Gate = newGate;
  const said: (Said & { at: number })[] = [];
  const pauses: number[] = [];
  let spoke = 0;
  for (const [moments, db] of parts) {
    for (let n = 0; n < moments; n += 1) {
      const after = hearMoment(gate, db);
      gate = after.gate;
      if (after.said) said.push({ ...after.said, at: gate.at });
      if (gate.speaks) spoke += 1;
      if (isPausing(gate)) pauses.push(gate.at);
    }
  }
  return { said, spoke, gate, pauses };
}
const near = (value: number, wanted: number, by: number): void => {
  expect(value).toBeGreaterThanOrEqual(wanted - by);
  expect(value).toBeLessThanOrEqual(wanted + by);
};

describe('the gate', () => {
  it('says what was said, from where to where, once a pause has ended it', () => {
    const { said } = heard([100, -60], [60, -30], [100, -60]);
    expect(said).toHaveLength(1);
    near(said[0]!.from, 101, 3);
    near(said[0]!.to, 160, 12);
    near(said[0]!.at, said[0]!.to + PAUSE, 1);
    expect(said[0]).toMatchObject({ long: false });
    near(said[0]!.room, -60, 1);
  });

  it('takes a phrase with a pause in it for one, and two phrases for two', () => {
    expect(heard([100, -60], [30, -30], [20, -60], [30, -30], [80, -60]).said).toHaveLength(1);
    expect(heard([100, -60], [30, -30], [70, -60], [30, -30], [80, -60]).said).toHaveLength(2);
  });

  it('says once a pause that it may be the end, well before it is taken for one', () => {
    const { said, pauses } = heard([100, -60], [30, -30], [25, -60], [30, -30], [80, -60]);
    expect(said).toHaveLength(1);
    expect(pauses).toHaveLength(2);
    near(pauses[0]!, 100 + 30 + 12, 8);
    near(said[0]!.at - pauses[1]!, PAUSE - 12, 1);
    // A knock is no beginning.
    expect(heard([100, -60], [5, -20], [100, -60]).pauses).toEqual([]);
  });

  it('takes a knock for nothing', () => {
    expect(heard([100, -60], [5, -20], [100, -60])).toMatchObject({ said: [], spoke: 0 });
  });

  it('is told of nobody in silence, nor in an even noise of any loudness', () => {
    for (const db of [-120, -60, -20, 0]) expect(heard([500, db]).said).toEqual([]);
  });

  it('follows a room that grows louder within some two seconds, and one that grows quiet at once', () => {
    const { gate, said } = heard([200, -60], [400, -35]);
    near(gate.room, -35, 1);
    // What began was no phrase that anybody can mean: it went on for as long as it took to be followed.
    expect(said.length).toBeLessThanOrEqual(1);
    near(heard([200, -35], [30, -60]).gate.room, -60, 3);
  });

  it('says once that somebody talks, as soon as it is too long, and not again while they do', () => {
    const word = [
      [40, -30],
      [10, -55],
    ] as const;
    const talk = Array.from({ length: 60 }, () => word).flat();
    const { said, pauses } = heard([100, -60], ...talk, [100, -60]);
    expect(said.map(({ long }) => long)).toEqual([true]);
    near(said[0]!.at, 100 + MOST, 15);
    // Its pauses are no end of a phrase any more.
    expect(pauses).toEqual([]);
  });

  it('stays shut for the first moments, which may be the microphone opening', () => {
    expect(heard([15, -10], [200, -60]).said).toEqual([]);
  });

  it('holds to the same whatever number the room is made of: no number at all is silence to it', () => {
    const { gate } = heard([50, -60], [5, -Infinity], [100, -60]);
    expect(Number.isFinite(gate.room)).toBe(true);
    const { said } = heard([50, -60], [5, -Infinity], [260, -60], [40, -30], [60, -60]);
    near(said.at(-1)!.to - said.at(-1)!.from, 45, 10);
  });
});
