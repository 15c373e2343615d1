import { existsSync, readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { MACHINES } from '../../machines/kitchen/kitchen.ts';
import type { StageMeta } from '../../machines/meta.ts';
import { BAKE_STAGES, OVEN_STAGES, type Hazard } from '../../src/core/records/stage.ts';
import { TASKS } from '../../src/core/records/task.ts';
import { sketchOf } from '../../src/core/sketches/of-stage.ts';
import { AGES } from '../../src/core/small/ages.ts';
import { guardOf, isGated } from '../../src/core/small/guard.ts';
import { mayDo } from '../../src/core/small/may-do.ts';
import { smallWords } from '../../src/core/small/small-words.ts';
import { de } from '../../src/core/speech/de.ts';
import { fr } from '../../src/core/speech/fr.ts';
import { speakIn, type Tongue } from '../../src/core/speech/tongue.ts';
import { bakeWords } from '../../src/core/speech/words/bake-words.ts';
import { ovenWords } from '../../src/core/speech/words/oven.ts';
import { sketches } from '../../src/core/speech/words/sketches.ts';
import { tasks } from '../../src/core/speech/words/tasks.ts';

const STAGES = [...BAKE_STAGES, ...OVEN_STAGES];
const CATALOGUES = { en: {}, fr, de };

/** Every state of the three charts in which a bake, an oven or a pot can stand, and what its chart says of it. */
const statesOfCharts = (): ReadonlyMap<string, StageMeta> => {
  const found = new Map<string, StageMeta>();
  for (const { root } of [MACHINES.bake, MACHINES.oven, MACHINES.lane]) {
    const walk = (node: typeof root): void => {
      const inner = Object.values(node.states) as unknown as (typeof root)[];
      if (inner.length === 0) found.set(node.path.join('.'), (node.meta ?? {}) as StageMeta);
      else inner.forEach(walk);
    };
    walk(root as never);
  }
  return found;
};
const STATES = statesOfCharts();
/** Where a lane goes when its pot is empty: nothing is done or seen there any more. */
const OVER = ['gone'];
const shown = [...STATES.keys()].filter((state) => !OVER.includes(state));

/** A word that a child reads, and no other tongue left there in English. */
const texts = (words: object): readonly string[] => Object.values(words) as readonly string[];

afterEach(() => speakIn('en'));

it('knows every state of the machines as a stage, and no stage that no machine has', () => {
  expect(shown.toSorted()).toEqual([...STAGES].toSorted());
});

describe.each(Object.keys(CATALOGUES) as Tongue[])('in %s', (tongue) => {
  it.each(STAGES)(
    '%s has a picture, words for grown-ups, and for each age a deed of its own',
    (stage) => {
      const english = AGES.map((ages) => ({ ...smallWords(ages, stage) }));
      const plain = {
        ...((stage in bakeWords ? bakeWords : ovenWords) as Record<string, object>)[stage],
      };
      speakIn(tongue, CATALOGUES[tongue]);
      const sketch = sketchOf(stage, null);
      expect(existsSync(new URL(`../../assets/sketches/${sketch}.svg`, import.meta.url))).toBe(
        true,
      );
      expect(sketches[sketch]).not.toBe('');
      const grown = {
        ...((stage in bakeWords ? bakeWords : ovenWords) as Record<string, object>)[stage],
      };
      expect(Object.keys(grown)).toEqual(
        expect.arrayContaining(['headline', 'detail', 'slab', 'spoken']),
      );
      expect(texts(grown).filter((text) => text === '')).toEqual(
        texts(plain).filter((text) => text === ''),
      );
      AGES.forEach((ages, i) => {
        const words = { ...smallWords(ages, stage) };
        for (const text of texts(words)) expect(text).not.toBe('');
        expect(Object.keys(words)).toEqual(['act', 'say', 'task', 'praise']);
        if (tongue !== 'en') expect(words.task).not.toBe(english[i]!.task);
      });
    },
  );

  it.each(TASKS)('the task %s has a picture, words, and for each age a deed of its own', (task) => {
    speakIn(tongue, CATALOGUES[tongue]);
    const sketch = sketchOf('bulk.proving', task);
    const svg = readFileSync(
      new URL(`../../assets/sketches/${sketch}.svg`, import.meta.url),
      'utf8',
    );
    expect(svg).toContain('id="sketch"');
    for (const key of ['headline', 'detail', 'done', 'subject'] as const)
      expect(tasks[task][key]).not.toBe('');
    for (const ages of AGES)
      for (const text of texts(smallWords(ages, task))) expect(text).not.toBe('');
  });
});

describe('no act at a hot, sharp or powered step is given to a child', () => {
  const HOT: readonly Hazard[] = ['hot', 'blade', 'machine'];
  it.each(shown.filter((state) => HOT.includes(STATES.get(state)!.hazard ?? 'none')))(
    '%s',
    (state) => {
      const { hazard } = STATES.get(state)!;
      for (const ages of AGES) {
        const guard = guardOf(state as (typeof STAGES)[number], hazard);
        expect(isGated(guard)).toBe(true);
        expect(mayDo(guard, ages)).toEqual({ acts: 'grownUp', presses: false });
      }
    },
  );

  it('and there are as many of them as the charts name', () => {
    const hot = shown.filter((state) => HOT.includes(STATES.get(state)!.hazard ?? 'none'));
    expect(hot.length).toBeGreaterThanOrEqual(8);
    expect(hot).toEqual(
      expect.arrayContaining(['score', 'load', 'lift', 'unload', 'turnOn', 'turnOff']),
    );
  });
});
