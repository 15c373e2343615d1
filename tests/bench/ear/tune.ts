import { nearest } from '../../../src/core/ear/nearest.ts';
import { EAR_ENGINES } from '../../../src/core/ear/person.ts';
import { COMMANDS } from '../../../src/core/ear/phrases.ts';
import { OVER } from './corpus.ts';
import { listened, type Listened } from './heard-by.ts';
import { openNets } from './nets.ts';
import { SETS, TUNING_SPEECH } from './texts.ts';
import { TUNING } from './voices.ts';

/**
 * `npx tsx tests/bench/ear/tune.ts`: what the tuning voices give for every distance that might still be the
 * same phrase, as a share of what stands in src/core/ear/nearest.ts.
 */
const tried = [0.8, 0.85, 0.9, 0.95, 1, 1.05, 1.1, 1.15];
const nets = await openNets();
const all: Listened[] = [];
for (const voice of TUNING) all.push(await listened(voice, TUNING_SPEECH, nets));
const rows = all.flatMap(({ person, phrases, speech }) =>
  EAR_ENGINES.flatMap((engine) =>
    [...phrases, ...speech].map(({ phrase, over, made }) => {
      const cuts = made.filter(({ cut }) => !cut.long);
      const found = cuts.map(({ saying }) => nearest(saying, person, COMMANDS, engine)[0] ?? null);
      return { engine, phrase, over, found };
    }),
  ),
);
for (const engine of EAR_ENGINES)
  for (const most of tried) {
    const right: Record<number, [number, number]> = { 30: [0, 0], 20: [0, 0], 10: [0, 0] };
    const mistaken: [number, number] = [0, 0];
    for (const { phrase, over, found } of rows.filter((row) => row.engine === engine))
      for (const set of SETS) {
        const first = found.find((one) => one && one.near < most && set.includes(one.phrase));
        const count = phrase === null ? mistaken : set.includes(phrase) ? right[over]! : null;
        if (!count) continue;
        count[0] += 1;
        if (phrase === null ? first : first?.phrase === phrase) count[1] += 1;
      }
    const shares = [...OVER.map((over) => right[over]!), mistaken];
    const [a, b, c, f] = shares.map(([of, got]) => ((100 * got) / of).toFixed(1));
    console.log(`${engine} ${most}: ${a} / ${b} / ${c} % right, ${f} % of speech`);
  }
