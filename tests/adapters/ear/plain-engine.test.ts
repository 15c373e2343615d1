import { describe, expect, it } from 'vitest';
import { plainEngine } from '../../../src/adapters/ear/plain-engine.ts';
import { decide } from '../../../src/core/ear/decide.ts';
import type { Heard } from '../../../src/core/ear/heard.ts';
import { HEARD_AT, makeListener, MARGIN, type Cut } from '../../../src/core/ear/listener.ts';
import type { EarPerson, Saying } from '../../../src/core/ear/person.ts';
import type { EarPhrase } from '../../../src/core/ear/phrases.ts';
import { warpDistance } from '../../../src/core/ear/warp.ts';
import { joined, quiet, tone } from '../../core/ear/support/sounds.ts';

/** What is cut out of a sound in a quiet room. */
function cutsOf(sound: Float32Array, room = 0.001): readonly Cut[] {
  const cuts: Cut[] = [];
  const listener = makeListener({
    speaks: () => undefined,
    room: () => undefined,
    cut: (cut) => cuts.push(cut),
  });
  listener.push(joined(quiet(1.2, room), sound, quiet(1, room, 9)));
  return cuts;
}
/** Made words: tones one after the other, Hz, each a sixth of a second. */
const word = (...tones: readonly number[]): Float32Array<ArrayBuffer> =>
  joined(...tones.map((hertz) => tone(1 / 6, hertz)));
const WORDS: Readonly<Partial<Record<EarPhrase, Float32Array<ArrayBuffer>>>> = {
  done: word(400, 900, 1_600),
  takeBack: word(1_700, 500, 500, 1_200),
  sayAgain: word(700, 700, 2_300, 600),
};
const ACTIVE = Object.keys(WORDS) as EarPhrase[];

const sayingOf = async (sound: Float32Array): Promise<Saying> => {
  const [cut] = cutsOf(sound);
  if (!cut) throw new Error('Nothing was cut out of it.');
  return plainEngine.saying(cut);
};
let person: Promise<EarPerson> | null = null;
/** Whoever said these words once. */
const known = (): Promise<EarPerson> => (person ??= learn());
async function learn(): Promise<EarPerson> {
  const sayings: Partial<Record<EarPhrase, readonly Saying[]>> = {};
  for (const [phrase, sound] of Object.entries(WORDS))
    sayings[phrase as EarPhrase] = [await sayingOf(sound)];
  return { id: 'baker', mark: 'sun', child: false, sayings };
}
/** All that is made of a sound by whoever knows these words. */
async function heard(sound: Float32Array, room?: number): Promise<readonly Heard[]> {
  const people = [await known()];
  const found: Heard[] = [];
  for (const cut of cutsOf(sound, room)) {
    const saying = await plainEngine.saying(cut);
    const { long } = cut;
    const asked = { saying, room: cut.room, long, people, active: ACTIVE, last: null };
    found.push(decide({ ...asked, engine: 'plain' }));
  }
  return found;
}
const phrasesOf = (all: readonly Heard[]) => all.map(({ phrase }) => phrase);

describe('a saying as the shape of its sound', () => {
  it('is a row every 20 ms of what was said, and of a little about it', async () => {
    const { plain, learned } = await sayingOf(word(400, 900, 1_600));
    expect(learned).toBeNull();
    expect(plain.size).toBe(26);
    expect(plain.count).toBeGreaterThan(24);
    expect(plain.count).toBeLessThan(36);
    expect(plain.data.every(Number.isFinite)).toBe(true);
  });

  it('is the same however far the microphone is', async () => {
    const said = word(400, 900, 1_600);
    const [near] = cutsOf(said);
    const far = { ...near!, sound: near!.sound.map((sample) => sample / 30) };
    const [a, b] = await Promise.all([plainEngine.saying(near!), plainEngine.saying(far)]);
    expect(warpDistance(a.plain, b.plain)).toBeLessThan(0.05);
  });

  it.each(ACTIVE)('tells %s from the others, said a little slower too', async (phrase) => {
    expect(phrasesOf(await heard(WORDS[phrase]!))).toEqual([phrase]);
    const slow = joined(
      ...Array.from({ length: 20 }, (_, n) => {
        const { length } = WORDS[phrase]!;
        const piece = WORDS[phrase]!.subarray((n * length) / 20, ((n + 1) * length) / 20);
        return n % 5 === 0 ? joined(piece, piece) : piece;
      }),
    );
    expect(phrasesOf(await heard(slow))).toEqual([phrase]);
  });
});

describe('what is no phrase', () => {
  it('silence: nothing is cut out of it, and a cut of it would be none', async () => {
    expect(await heard(new Float32Array(2 * HEARD_AT))).toEqual([]);
    expect(await heard(new Float32Array(2 * HEARD_AT), 0)).toEqual([]);
    const sound = new Float32Array(HEARD_AT);
    const saying = await plainEngine.saying({ sound, lead: MARGIN, room: -70, long: false });
    const people = [await known()];
    const asked = { saying, room: -70, long: false, people, active: ACTIVE, last: null };
    expect(decide({ ...asked, engine: 'plain' })).toEqual({ phrase: null, why: 'other' });
  });

  it.each([0, 100, 511, 512])('a cut of %i samples', async (samples) => {
    const sound = quiet(1).slice(0, samples);
    const cut = { sound, lead: Math.min(MARGIN, samples), room: -60, long: false };
    const saying = await plainEngine.saying(cut);
    const people = [await known()];
    const asked = { saying, room: -60, long: false, people, active: ACTIVE, last: null };
    expect(decide({ ...asked, engine: 'plain' }).phrase).toBeNull();
  });

  it('shouting, which is cut off at full', async () => {
    const shout = tone(0.7, 900, 3).map((sample) => Math.max(-1, Math.min(1, 60 * sample)));
    expect(phrasesOf(await heard(shout))).toEqual([null]);
  });

  it('music: chords one after the other, short and long', async () => {
    const chord = (seconds: number, hertz: number): Float32Array => {
      const [a, b, c] = [1, 1.26, 1.5].map((by) => tone(seconds, hertz * by, 2));
      return a!.map((sample, n) => (sample + b![n]! + c![n]!) / 2);
    };
    const tune = joined(...[262, 349, 392, 262, 330, 220].map((hertz) => chord(0.5, hertz)));
    expect((await heard(tune)).every(({ phrase }) => phrase === null)).toBe(true);
    const short = joined(chord(0.3, 262), chord(0.3, 392));
    expect((await heard(short)).every(({ phrase }) => phrase === null)).toBe(true);
  });

  it('a talk, with one of the words in it', async () => {
    const talk = joined(tone(2, 500, 4), WORDS.done!, tone(2, 800, 4));
    expect(await heard(talk)).toEqual([{ phrase: null, why: 'long' }]);
  });
});

it('the same word again and again is the same phrase each time', async () => {
  const said = Array.from({ length: 6 }, () => joined(WORDS.takeBack!, quiet(0.9)));
  const all = await heard(joined(...said));
  expect(phrasesOf(all)).toEqual(said.map(() => 'takeBack'));
});
