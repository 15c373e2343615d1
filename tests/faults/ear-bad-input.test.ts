import { beforeAll, describe, expect, test, type TestContext } from 'vitest';
import { learnedEngine } from '../../src/adapters/ear/learned-engine.ts';
import { decide } from '../../src/core/ear/decide.ts';
import type { Heard } from '../../src/core/ear/heard.ts';
import { EAR_ENGINES, type EarEngine, type EarPerson } from '../../src/core/ear/person.ts';
import { HEARD_AT, makeListener, type Cut } from '../../src/core/ear/listener.ts';
import { hasVoices } from '../../src/serve/prepare/find-voices.mjs';
import { cutsOf, enrolled } from '../bench/ear/corpus.ts';
import { learnPerson } from '../bench/ear/learn.ts';
import { openNets } from '../bench/ear/nets.ts';
import { inKitchen } from '../bench/ear/noise.ts';
import { say } from '../bench/ear/say.ts';
import { SAYS, SCORING_SPEECH, SETS } from '../bench/ear/texts.ts';
import { SCORING, type Voice } from '../bench/ear/voices.ts';
import { NEEDS } from '../reporter.ts';

/** What the ear is not meant for, said by made voices in a made kitchen. */
const [ACTIVE = []] = SETS;
const VOICE = SCORING[0]!;
const AS_EVER = { haste: 1, pitch: 1 };
const engine = openNets().then(learnedEngine);
let person: EarPerson;

const needVoices = ({ skip }: TestContext): void =>
  skip(!hasVoices(), `${NEEDS}espeak-ng and flite`);
beforeAll(async () => {
  if (hasVoices()) person = await learnPerson(await engine, 'baker', await enrolled(VOICE, ACTIVE));
}, 600_000);

async function heard(cuts: readonly Cut[], wanted: EarEngine): Promise<readonly Heard[]> {
  const found: Heard[] = [];
  for (const cut of cuts) {
    const saying = await (await engine).saying(cut);
    const { room, long } = cut;
    const asked = { saying, room, long, people: [person], active: ACTIVE, last: null };
    found.push(decide({ ...asked, engine: wanted }));
  }
  return found;
}
/** Which of these are taken for a phrase. */
async function taken(texts: readonly string[], voice: Voice, wanted: EarEngine) {
  const found: string[] = [];
  for (const [n, text] of texts.entries()) {
    const cuts = cutsOf(inKitchen(await say(text, voice, AS_EVER), 20, n + 1, 1.2));
    for (const { phrase } of await heard(cuts, wanted))
      if (phrase !== null) found.push(`${text} → ${phrase}`);
  }
  return found;
}
const foreign = (voice: string): Voice => ({
  name: voice,
  by: { tool: 'espeak-ng', voice, pitch: 50 },
  throat: 1,
});

/** Another language, each sentence about as long as a phrase. */
const GERMAN = [
  'Der Teig ist da',
  'Noch nicht',
  'Sag das noch einmal',
  'Wie lange noch',
  'Gib mir das',
];
const FRENCH = [
  "C'est fini",
  'Pas encore',
  'Encore une fois',
  'Combien de temps',
  'La pâte est là',
];
/** Half a phrase, in the same voice. What is one sound away is taken for it: how often, `npm run bench` prints. */
const HALF = [
  "That's a pan",
  'Take the tray',
  'Get back',
  'Say it to Jane',
  'Once again',
  'How much butter',
];

describe.for(EAR_ENGINES)('%s', (wanted) => {
  test.for([
    ['German', GERMAN, 'de'],
    ['French', FRENCH, 'fr'],
  ] as const)('%s is no phrase', async ([, texts, voice], context) => {
    needVoices(context);
    expect(await taken(texts, foreign(voice), wanted)).toEqual([]);
  });

  test('somebody else who was never listened to says the very phrases: few are taken', async (context) => {
    needVoices(context);
    const texts = ACTIVE.map((phrase) => SAYS[phrase]);
    const found = await taken(texts, foreign('en-gb+m1'), wanted);
    expect(found.length).toBeLessThanOrEqual(texts.length / 2);
  });

  test('half a phrase and something else is seldom taken for it', async (context) => {
    needVoices(context);
    const found = await taken(HALF, VOICE, wanted);
    expect(found.length, found.join(', ')).toBeLessThanOrEqual(1);
  });

  test('the same phrase again and again is taken each time', async (context) => {
    needVoices(context);
    const found = await taken(Array<string>(8).fill(SAYS.done), VOICE, wanted);
    expect(found).toEqual(Array<string>(8).fill(`${SAYS.done} → done`));
  });

  test('ten minutes of talk without a pause are one talk, and no phrase', async (context) => {
    needVoices(context);
    const parts = await Promise.all(
      SCORING_SPEECH.slice(0, 6).map((text) => say(text, VOICE, AS_EVER)),
    );
    const cuts: Cut[] = [];
    const { push } = makeListener({
      speaks: () => undefined,
      room: () => undefined,
      cut: (cut) => cuts.push(cut),
    });
    push(inKitchen(new Float32Array(HEARD_AT), 30, 1));
    let said = 0;
    while (said < 600 * HEARD_AT)
      for (const part of parts) {
        push(part);
        said += part.length;
      }
    expect(cuts.some(({ long }) => long)).toBe(true);
    const rest = await heard(cuts, wanted);
    expect(rest.filter(({ phrase }) => phrase !== null)).toEqual([]);
  });
});
