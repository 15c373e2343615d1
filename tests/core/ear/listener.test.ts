import { describe, expect, it } from 'vitest';
import { HEARD_AT, makeListener, MARGIN, type Cut } from '../../../src/core/ear/listener.ts';
import { tone, quiet, joined } from './support/sounds.ts';

function listened(sound: Float32Array, block = 128) {
  const cuts: Cut[] = [];
  const rooms: number[] = [];
  const speaks: boolean[] = [];
  const pauses: Float32Array[] = [];
  const listener = makeListener({
    speaks: (now) => speaks.push(now),
    room: (db) => rooms.push(db),
    pauses: (sound) => pauses.push(sound),
    cut: (cut) => cuts.push(cut),
  });
  for (let at = 0; at < sound.length; at += block) listener.push(sound.subarray(at, at + block));
  return { cuts, rooms, speaks, pauses };
}

const SAID = joined(quiet(1.5), tone(0.6, 700), quiet(1.5));

describe('the listener', () => {
  it('cuts a saying out with its margins, and tells when somebody speaks and has ended', () => {
    const { cuts, speaks } = listened(SAID);
    expect(speaks).toEqual([true, false]);
    expect(cuts).toHaveLength(1);
    const [cut] = cuts;
    expect(cut!.lead).toBe(MARGIN);
    expect((cut!.sound.length - 2 * MARGIN) / HEARD_AT).toBeCloseTo(0.6, 0);
    // What is before it in the cut is the quiet room, and what follows is the tone.
    const loud = (from: number, to: number) =>
      Math.max(...cut!.sound.subarray(from, to).map(Math.abs));
    expect(loud(0, MARGIN - 800)).toBeLessThan(0.01);
    expect(loud(MARGIN, MARGIN + 800)).toBeGreaterThan(0.1);
    expect(loud(cut!.sound.length - MARGIN + 1600, cut!.sound.length)).toBeLessThan(0.01);
  });

  it('hands on, before it knows the end, how the saying begins that it cuts then', () => {
    const { cuts, pauses } = listened(joined(quiet(1), tone(0.4, 700), quiet(0.2), SAID));
    expect([cuts.length, pauses.length]).toEqual([2, 2]);
    pauses.forEach((sound, n) => {
      const { length } = cuts[n]!.sound;
      expect(sound).toEqual(cuts[n]!.sound.subarray(0, sound.length));
      expect((length - sound.length) / HEARD_AT).toBeCloseTo(0.23, 1);
    });
  });

  it.each([1, 441, 60_000])('blocks of %i samples are all the same to it', (block) => {
    expect(listened(SAID, block)).toEqual(listened(SAID));
  });

  it('tells about once a second how loud the room is, which a hum below speech does not raise', () => {
    const room = quiet(4);
    const { rooms } = listened(room);
    expect(rooms).toHaveLength(4);
    const hum = tone(4, 60);
    const hummed = listened(room.map((sample, n) => sample + 0.3 * hum[n]!)).rooms;
    expect(hummed.at(-1)!).toBeLessThan(rooms.at(-1)! + 25);
    const loud = listened(room.map((sample) => sample * 10)).rooms;
    expect(loud.at(-1)! - rooms.at(-1)!).toBeCloseTo(20, 0);
  });

  it('hands on no sound of a talk beyond the longest phrase', () => {
    const talk = joined(quiet(1), tone(8, 700, 4), quiet(1));
    const { cuts } = listened(talk);
    expect(cuts.map(({ long }) => long)).toEqual([true]);
    expect(cuts[0]!.sound.length).toBeLessThan(4 * HEARD_AT);
  });

  it('hears silence, and what is no number, as nothing', () => {
    expect(listened(new Float32Array(HEARD_AT * 3)).cuts).toEqual([]);
    const broken = SAID.slice();
    broken.fill(NaN, 100, 3_000);
    broken.fill(Infinity, 3_000, 3_100);
    expect(listened(broken).cuts).toHaveLength(1);
    expect(listened(broken).cuts[0]!.sound.every(Number.isFinite)).toBe(true);
  });
});
