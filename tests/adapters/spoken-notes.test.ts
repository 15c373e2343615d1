import { expect, it } from 'vitest';
import type { RecorderParts } from '../../src/adapters/speaker/recorder.ts';
import {
  openSpokenNotes,
  type NoteParts,
  type NotePlayer,
} from '../../src/adapters/speaker/spoken-notes.ts';
import type { Sound } from '../../src/core/speech/recording.ts';

const NOTE = { type: 'audio/webm;codecs=opus', bytes: Uint8Array.of(1, 2, 3) };
const RATE = 8_000;
/** Half a second of a voice between two of nothing. */
const SPOKEN: Sound = {
  rate: RATE,
  samples: Float32Array.from({ length: 1.5 * RATE }, (_, i) =>
    i > RATE / 2 && i < RATE ? 0.3 * Math.sin(i / 5) : 0,
  ),
};
const settled = async (): Promise<void> => {
  for (let i = 0; i < 30; i += 1) await Promise.resolve();
};

/** A microphone that hands over three bytes, and a player that is told how it ends. */
function madeOf(change: Partial<RecorderParts> = {}, refuses = false) {
  const waits: { ms: number; then: () => void }[] = [];
  const seen = { bits: 0, stopped: 0, paused: 0, addresses: [] as string[], src: true };
  const file = new Blob([NOTE.bytes], { type: NOTE.type });
  const recorder: RecorderParts = {
    media: {
      getUserMedia: async () =>
        ({ getTracks: () => [{ stop: () => void (seen.stopped += 1) }] }) as never,
    },
    open: (_, bits) => {
      seen.bits = bits ?? 0;
      const its = {
        start: () => undefined,
        ondataavailable: (_: { data: Blob }) => undefined as void,
        onstop: () => undefined as void,
        stop() {
          its.ondataavailable({ data: file });
          its.onstop();
        },
      };
      return its as never;
    },
    decode: async () => SPOKEN,
    level: () => () => undefined,
    session: () => undefined,
    later(ms, then) {
      const wait = { ms, then };
      waits.push(wait);
      return () => void waits.splice(waits.indexOf(wait), 1);
    },
    ...change,
  };
  const ends = { ended: () => {}, lost: () => {} };
  const player: NotePlayer = {
    play: () => (refuses ? Promise.reject(new Error('no')) : Promise.resolve()),
    pause: () => void (seen.paused += 1),
    removeAttribute: () => void (seen.src = false),
  };
  const parts: NoteParts = {
    player: (_, ended, lost) => (Object.assign(ends, { ended, lost }), player),
    address: () => (seen.addresses.push('blob:1'), 'blob:1'),
    drop: (address) => void seen.addresses.splice(seen.addresses.indexOf(address), 1),
  };
  const notes = openSpokenNotes(recorder.later, recorder, parts);
  return { notes, waits, seen, ends };
}

it('keeps a note as it was recorded, with few bits, and lets go of the microphone', async () => {
  const { notes, seen } = madeOf();
  const take = notes.record(() => undefined);
  await settled();
  take.stop();
  const its = await take.over;
  expect(its).toEqual(NOTE);
  expect([seen.bits, seen.stopped]).toEqual([48_000, 1]);
});

it('is over after a minute by itself, with what was said till then', async () => {
  const { notes, waits } = madeOf();
  const take = notes.record(() => undefined);
  await settled();
  waits.find(({ ms }) => ms === 60_000)!.then();
  expect(await take.over).toEqual(NOTE);
});

it('is nothing where nobody spoke, or where it could not be heard again', async () => {
  const none = async () => ({ rate: RATE, samples: new Float32Array(RATE) });
  const broken = () => Promise.reject(new Error('broken'));
  for (const [decode, why] of [
    [none, 'silent'],
    [broken, 'failed'],
  ] as const) {
    const take = madeOf({ decode }).notes.record(() => undefined);
    await settled();
    take.stop();
    expect(await take.over).toBe(why);
  }
});

it('plays a note to its end, stops it at once, and says where it cannot be heard', async () => {
  const { notes, ends, seen } = madeOf();
  const heard = notes.play(NOTE);
  ends.ended();
  expect(await heard.over).toBe('heard');
  const stopped = notes.play(NOTE);
  expect(seen.addresses).toEqual(['blob:1']);
  const paused = seen.paused;
  stopped.stop();
  expect([await stopped.over, seen.paused, seen.src]).toEqual(['stopped', paused + 1, false]);
  const lost = notes.play(NOTE);
  ends.lost();
  expect(await lost.over).toBe('lost');
  expect(await madeOf({}, true).notes.play(NOTE).over).toBe('lost');
  // No address of any is left: what is erased is nowhere.
  expect(seen.addresses).toEqual([]);
});
