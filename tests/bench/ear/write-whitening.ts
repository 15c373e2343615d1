import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format, resolveConfig } from 'prettier';
import { learnedEngine, LEARNED } from '../../../src/adapters/ear/learned-engine.ts';
import { COMMANDS } from '../../../src/core/ear/phrases.ts';
import { phrasesSaid } from './corpus.ts';
import { openNets } from './nets.ts';
import { TUNING } from './voices.ts';

/**
 * Writes src/adapters/ear/whitening.ts: where each of the net's numbers lies, and how far it is spread, in what
 * the tuning voices say. `npx tsx tests/bench/ear/write-whitening.ts`; espeak-ng and flite must be there.
 */
const engine = learnedEngine(await openNets());
const sums = Array.from({ length: LEARNED }, () => ({ sum: 0, squares: 0 }));
let count = 0;
for (const voice of TUNING) {
  const cuts = (await phrasesSaid(voice, COMMANDS)).flatMap((said) => said.cuts);
  for (const { sound } of cuts) {
    const { learned: rows } = await engine.ahead!(sound, null);
    count += rows.count;
    rows.data.forEach((value, i) => {
      const at = sums[i % LEARNED]!;
      at.sum += value;
      at.squares += value * value;
    });
  }
  console.log(`${voice.name}: ${count} rows so far`);
}
const means = sums.map(({ sum }) => sum / count);
const spreads = sums.map(({ squares }, i) => Math.sqrt(squares / count - means[i]! ** 2));
const list = (numbers: readonly number[]): string =>
  numbers.map((number) => number.toFixed(2)).join(' ');

const file = fileURLToPath(new URL('../../../src/adapters/ear/whitening.ts', import.meta.url));
const text = `/** Written by tests/bench/ear/write-whitening.ts out of ${count} rows of made voices. */
const numbers = (list: string): Float32Array<ArrayBuffer> => Float32Array.from(list.split(' '), Number);

export const MEANS = numbers('${list(means)}');
export const SPREADS = numbers('${list(spreads)}');
`;
const style = await resolveConfig(file);
writeFileSync(file, await format(text, { ...style, parser: 'typescript' }));
