/**
 * Speaks every phrase that core/speech can say and writes the clips with their index to assets/voice:
 * `npx tsx assets/make/voice/make.ts`. Wanted only when words changed: what is there already is kept,
 * unless `--anew`. Needs what Debian calls flite (2.2), ffmpeg and lame, none of which the app or its
 * tests know. `--to DIR` writes into another folder.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { readClipIndex, type Clip } from '../../../src/core/speech/clip-index.ts';
import { RATED_FROM, wordsIn } from '../../../src/core/speech/pace.ts';
import { collect } from './collect.ts';
import { phrasesOf, type Named, type Phrase } from './phrases.ts';
import { BRISK, CALM, render } from './render.ts';
import { PACKS } from './spoken.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
/** So many are spoken at once. */
const AT_ONCE = 2;

const { values } = parseArgs({
  options: {
    to: { type: 'string' },
    anew: { type: 'boolean', default: false },
  },
});
const to = values.to ?? join(root, 'assets/voice');

async function allPhrases(): Promise<readonly Phrase[]> {
  const dir = join(root, 'src/core/speech/words');
  const texts = [];
  for (const file of readdirSync(dir).sort()) {
    const exports: unknown = await import(pathToFileURL(join(dir, file)).href);
    texts.push(...collect({ ...(exports as object) }, file.replace('.ts', '')));
  }
  const shelf = join(root, 'assets/formulas');
  const formulas = readdirSync(shelf)
    .sort()
    .map((file) => JSON.parse(readFileSync(join(shelf, file), 'utf8')) as Named);
  return phrasesOf(texts, formulas);
}

/** A clip's sound with what the index tells of it. */
type Made = Pick<Clip, 'seconds' | 'wpm'> & { readonly mp3: Buffer };

/** What was spoken before, by id. */
function kept(): ReadonlyMap<string, Made> {
  const path = join(to, 'index.json');
  const index = existsSync(path) ? readClipIndex(JSON.parse(readFileSync(path, 'utf8'))) : null;
  return new Map(
    [...(values.anew ? [] : (index ?? []))].map(([id, { file, start, bytes, seconds, wpm }]) => {
      const mp3 = readFileSync(join(to, file)).subarray(start, start + bytes);
      return [id, { seconds, wpm, mp3 }];
    }),
  );
}

const round = (n: number, digits: number): number => Number(n.toFixed(digits));

async function renderAll(phrases: readonly Phrase[]): Promise<readonly Made[]> {
  const before = kept();
  const made: Made[] = [];
  let next = 0;
  const make = async ({ id, text, pack }: Phrase): Promise<Made> => {
    const old = before.get(id);
    if (old) return old;
    const { mp3, seconds, wpm, rms } = await render(text, pack === 'numbers' ? BRISK : CALM);
    console.log(
      `${seconds.toFixed(2)} s, ${wpm.toFixed(0)} a minute, RMS ${rms.toFixed(2)}: ${text}`,
    );
    return { mp3, seconds: round(seconds, 3), wpm: round(wpm, 1) };
  };
  const work = async (): Promise<void> => {
    for (let i = next++; i < phrases.length; i = next++) made[i] = await make(phrases[i]!);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  return made;
}

const phrases = await allPhrases();
const clips = await renderAll(phrases);
const index: Record<string, Clip> = {};
mkdirSync(to, { recursive: true });
for (const pack of PACKS) {
  const file = `${pack}.mp3`;
  const bytes: Buffer[] = [];
  let start = 0;
  phrases.forEach(({ id, pack: its }, i) => {
    if (its !== pack) return;
    const { mp3, seconds, wpm } = clips[i]!;
    index[id] = { file, start, bytes: mp3.length, seconds, wpm };
    bytes.push(mp3);
    start += mp3.length;
  });
  writeFileSync(join(to, file), Buffer.concat(bytes));
  console.log(`${file}: ${bytes.length} clips, ${start} bytes`);
}
const lines = Object.entries(index).map(([id, clip]) => `"${id}":${JSON.stringify(clip)}`);
writeFileSync(join(to, 'index.json'), `{\n${lines.join(',\n')}\n}\n`);

const rated = clips.filter((_, i) => wordsIn(phrases[i]!.text).length >= RATED_FROM);
const wpms = rated.map(({ wpm }) => wpm).sort((a, b) => a - b);
const seconds = clips.reduce((sum, clip) => sum + clip.seconds, 0);
console.log(
  `${clips.length} clips, ${seconds.toFixed(0)} s; ${rated.length} of ${RATED_FROM} words and more, ` +
    `${wpms[0]?.toFixed(0)} to ${wpms.at(-1)?.toFixed(0)} words a minute`,
);
