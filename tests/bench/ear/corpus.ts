import { makeListener, type Cut } from '../../../src/core/ear/listener.ts';
import { TAKES } from '../../../src/core/ear/person.ts';
import { EAR_PHRASES, type EarPhrase } from '../../../src/core/ear/phrases.ts';
import { seeded, type Seeded } from '../../core/day/support/seeded.ts';
import { inKitchen } from './noise.ts';
import { say } from './say.ts';
import { SAYS } from './texts.ts';
import type { Voice } from './voices.ts';

/** How far what is said is over its kitchen, dB. Voices are learned in the quietest. */
export const OVER = [30, 20, 10] as const;
export type Over = (typeof OVER)[number];

/** What was said, and what the listener cut out of it: nothing, one saying, or several. */
export interface Said {
  /** Null: ordinary speech. */
  readonly phrase: EarPhrase | null;
  readonly over: Over;
  readonly cuts: readonly Cut[];
}

export function cutsOf(sound: Float32Array): readonly Cut[] {
  const cuts: Cut[] = [];
  const { push } = makeListener({
    speaks: () => undefined,
    room: () => undefined,
    cut: (cut) => cuts.push(cut),
  });
  push(sound);
  return cuts;
}

/** Nobody says a phrase twice the same way: shares of the voice's own haste and pitch. */
const taken = ({ next }: Seeded) => ({ haste: 0.88 + 0.26 * next(), pitch: 0.9 + 0.2 * next() });
/** Somebody waits as long before and behind, s. */
const AROUND = 1.2;

const chanceOf = (voice: Voice, what: string): Seeded =>
  seeded([...voice.name, ...what].reduce((sum, c) => (sum * 31 + c.charCodeAt(0)) % 1_000_003, 7));

async function said(
  voice: Voice,
  text: string,
  over: Over,
  which: string,
): Promise<readonly Cut[]> {
  const chance = chanceOf(voice, `${text}, ${which}`);
  const sound = await say(text, voice, taken(chance));
  return cutsOf(inKitchen(sound, over, chance.whole(1, 1_000_000), AROUND));
}

/** What a voice says to be known: of each phrase so many takes. Throws where one was not heard. */
export async function enrolled(
  voice: Voice,
  phrases: readonly EarPhrase[] = EAR_PHRASES,
): Promise<ReadonlyMap<EarPhrase, readonly Cut[]>> {
  const found = new Map<EarPhrase, readonly Cut[]>();
  for (const phrase of phrases) {
    const takes = await Promise.all(
      Array.from({ length: TAKES }, async (_, n) => {
        const cut = (await said(voice, SAYS[phrase], OVER[0], `learned ${n}`)).find(
          ({ long }) => !long,
        );
        if (!cut) throw new Error(`${voice.name} was not heard to say ${phrase}.`);
        return cut;
      }),
    );
    found.set(phrase, takes);
  }
  return found;
}

/** Each phrase once more in each kitchen. */
export async function phrasesSaid(
  voice: Voice,
  phrases: readonly EarPhrase[] = EAR_PHRASES,
): Promise<readonly Said[]> {
  const found: Said[] = [];
  for (const phrase of phrases)
    for (const over of OVER)
      found.push({ phrase, over, cuts: await said(voice, SAYS[phrase], over, `asked ${over}`) });
  return found;
}

/** Ordinary speech, each sentence in one of the kitchens. */
export async function speechSaid(voice: Voice, texts: readonly string[]): Promise<readonly Said[]> {
  const found: Said[] = [];
  for (const [n, text] of texts.entries()) {
    const over = OVER[n % OVER.length]!;
    found.push({ phrase: null, over, cuts: await said(voice, text, over, 'speech') });
  }
  return found;
}
