import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { TestContext } from 'vitest';
import { writeWave } from '../../../assets/make/voice/wave.ts';
import { findRecogniser } from '../../../src/serve/prepare/find-recogniser.mjs';
import { NEEDS } from '../../reporter.ts';

/** The recogniser's sounds are of this rate, Hz. */
export const HEARD_AT = 16_000;

/** What was heard, and all that it may have been: nothing else can be recognised. */
export interface Utterance {
  readonly samples: Int16Array;
  readonly choices: readonly string[];
}

/** Bakers' words that its list lacks, in the sounds it knows. */
const OWN_WORDS: Readonly<Record<string, string>> = {
  levain: 'L AH V AE N',
  litre: 'L IY T ER',
  litres: 'L IY T ER Z',
  yoghurt: 'Y OW G ER T',
  doughs: 'D OW Z',
  "dough's": 'D OW Z',
  jiggles: 'JH IH G AH L Z',
  wholemeal: 'HH OW L M IY L',
  preshape: 'P R IY SH EY P',
  floured: 'F L AW ER D',
  "tablet's": 'T AE B L AH T S',
};

/** Leaves a test out, and has it counted as not run, where this machine has no recogniser. */
export const needRecogniser = ({ skip }: TestContext): void =>
  skip(findRecogniser() === null, `${NEEDS}pocketsphinx and pocketsphinx-en-us`);

const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replaceAll('’', "'")
    .replace(/[^a-z' -]/g, '')
    .split(/[ -]+/)
    .filter(Boolean);

/** A grammar of these choices alone, all as likely: one chain of words each. */
function grammarOf(name: string, choices: readonly string[]): string {
  const steps: string[] = [];
  const ends: number[] = [];
  let states = 1;
  for (const choice of choices) {
    let from = 0;
    for (const word of wordsOf(choice)) {
      steps.push(`TRANSITION ${from} ${states} 1.0 ${word}`);
      from = states;
      states += 1;
    }
    ends.push(from);
  }
  const close = ends.map((end) => `TRANSITION ${end} ${states} 1.0`);
  const head = `NUM_STATES ${states + 1}\nSTART_STATE 0\nFINAL_STATE ${states}`;
  return `FSG_BEGIN ${name}\n${head}\n${[...steps, ...close].join('\n')}\nFSG_END\n`;
}

/** How the words of all choices are pronounced. */
async function pronounced(list: string, utterances: readonly Utterance[]): Promise<string> {
  const wanted = new Set(utterances.flatMap(({ choices }) => choices.flatMap(wordsOf)));
  const wordIn = (line: string) => line.slice(0, line.indexOf(' ')).replace(/\(\d+\)$/, '');
  const lines = (await readFile(list, 'utf8')).split('\n').filter((l) => wanted.has(wordIn(l)));
  for (const line of lines) wanted.delete(wordIn(line));
  const own = Array.from(wanted, (word) => {
    const sounds = OWN_WORDS[word];
    if (sounds === undefined) throw new Error(`The recogniser has no "${word}".`);
    return `${word} ${sounds}`;
  });
  return `${[...lines, ...own].join('\n')}\n`;
}

/** Which choice each of them was taken for, all in one batch; null where it was none. */
export async function recognise(utterances: readonly Utterance[]): Promise<(string | null)[]> {
  const found = findRecogniser();
  if (found === null) throw new Error('There is no recogniser.');
  const dir = await mkdtemp(join(tmpdir(), 'loafward-heard-'));
  const at = (name: string) => join(dir, name);
  try {
    await writeFile(at('words.dict'), await pronounced(found.words, utterances));
    for (const [i, { samples, choices }] of utterances.entries()) {
      await writeFile(at(`${i}.wav`), writeWave({ rate: HEARD_AT, samples }));
      await writeFile(at(`${i}.fsg`), grammarOf(String(i), choices));
    }
    await writeFile(at('list'), `${utterances.map((_, i) => i).join('\n')}\n`);
    const options = {
      hmm: found.sounds,
      dict: at('words.dict'),
      adcin: 'yes',
      adchdr: '44',
      cepdir: dir,
      cepext: '.wav',
      ctl: at('list'),
      fsg: at('0.fsg'),
      fsgctl: at('list'),
      fsgdir: dir,
      fsgext: '.fsg',
      cmn: 'batch',
      hyp: at('heard'),
      logfn: at('log'),
    };
    const args = Object.entries(options).flatMap(([name, value]) => [`-${name}`, value]);
    await promisify(execFile)(found.program, args);
    const heard = (await readFile(at('heard'), 'utf8')).trimEnd().split('\n');
    return utterances.map(({ choices }, i) => {
      const [, words] = /^(.*) \(\d+ -?\d+\)$/.exec(heard[i] ?? '') ?? [];
      return choices.find((choice) => wordsOf(choice).join(' ') === words) ?? null;
    });
  } finally {
    await rm(dir, { recursive: true });
  }
}
