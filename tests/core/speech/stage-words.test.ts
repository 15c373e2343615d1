import { describe, expect, test } from 'vitest';
import { BAKE_STAGES, OVEN_STAGES, type OvenStage } from '../../../src/core/records/stage.ts';
import { bakeMachine } from '../../../machines/bake/bake.ts';
import type { StageMeta } from '../../../machines/meta.ts';
import { laneMachine } from '../../../machines/oven/lane.ts';
import { ovenMachine } from '../../../machines/oven/oven.ts';
import { callSubjects } from '../../../src/core/speech/words/calls.ts';
import { countdown } from '../../../src/core/speech/words/running.ts';
import { bakeWords } from '../../../src/core/speech/words/bake-words.ts';
import { bakeNames, ovenNames } from '../../../src/core/speech/words/names.ts';
import { ovenWords } from '../../../src/core/speech/words/oven.ts';
import { basketWords } from '../../../src/core/speech/words/shape.ts';
import { stoneWords } from '../../../src/core/speech/words/oven-stone.ts';
import { denseCooling } from '../../../src/core/speech/words/cool.ts';
import { manyWords } from '../../../src/core/speech/words/oven-many.ts';
import { tinWords } from '../../../src/core/speech/words/oven-tin.ts';
import { weighWords } from '../../../src/core/speech/words/weigh.ts';
import { said, shown } from '../../../src/core/speech/facts.ts';
import { fill, wants } from '../../../src/core/speech/fill.ts';
import type { StageWords } from '../../../src/core/speech/words.ts';
import { BIG_BAKE, SYSTEMS } from './support/big-bake.ts';
import { sentencesOf, wordsOf } from './support/catalogue.ts';

const stages: readonly (readonly [string, StageWords])[] = [
  ...Object.entries(bakeWords),
  ...Object.entries(ovenWords),
  ...Object.entries(stoneWords),
  ...Object.entries(tinWords),
  ...Object.entries(manyWords).flatMap(([vessel, many]) =>
    Object.entries(many).map(([stage, words]) => {
      const one = { pot: {}, stone: stoneWords, tin: tinWords }[vessel] as typeof tinWords;
      const all = ovenWords[stage as OvenStage];
      return [stage, { ...all, ...one[stage as OvenStage], ...words }] as const;
    }),
  ),
  ['cool.cooling', denseCooling],
  ...Object.entries(basketWords).map(([to, w]) => [`basket ${to}`, w] as const),
];
const withCards = [
  ...stages,
  ...Object.entries(weighWords).map(([k, w]) => [`weigh.${k}`, w] as const),
];

/** A template filled in each of them. */
const inEach = (template: string, how: typeof shown): readonly string[] =>
  SYSTEMS.map(({ units, ...times }) => fill(template, how({ ...BIG_BAKE, ...times }, units)));

const FIRST_VERBS =
  'Read Check Feed Leave Look Keep Weigh Mix Let Work Take Fold Spread Scatter Roll Divide Round Shape Lay Put Follow Label Note Bake Wash Clear Heat Get Score Load Lift Turn'.split(
    ' ',
  );

test('every stage of the bake and of the oven has words and a name', () => {
  expect(Object.keys(bakeWords).sort()).toEqual([...BAKE_STAGES].sort());
  expect(Object.keys(ovenWords).sort()).toEqual([...OVEN_STAGES].sort());
  expect(Object.keys(bakeNames).sort()).toEqual([...BAKE_STAGES].sort());
  expect(Object.keys(ovenNames).sort()).toEqual([...OVEN_STAGES].sort());
  for (const name of Object.values({ ...bakeNames, ...ovenNames }))
    expect(wordsOf(name).length, name).toBeLessThanOrEqual(4);
});

describe.each(stages)('%s', (_, words) => {
  test('headline begins with a verb and is at most 7 words', () => {
    for (const headline of inEach(words.headline, shown)) {
      expect(wordsOf(headline).length, headline).toBeLessThanOrEqual(7);
      expect(FIRST_VERBS).toContain(wordsOf(headline)[0]);
      expect(headline).not.toMatch(/\.$/);
    }
  });
});

describe.each(withCards)('%s', (_, words) => {
  test('detail is at most 2 sentences of 12 words, and says something new', () => {
    for (const detail of inEach(words.detail, shown)) {
      const sentences = sentencesOf(detail);
      expect(sentences.length).toBeGreaterThan(0);
      expect(sentences.length).toBeLessThanOrEqual(2);
      for (const s of sentences) expect(wordsOf(s).length, s).toBeLessThanOrEqual(12);
    }
    expect(words.detail).toMatch(/[.?]$/);
    expect(words.detail).not.toContain(words.headline);
  });

  test('slab is at most 3 words, what follows at most 7', () => {
    expect(wordsOf(words.slab).length).toBeLessThanOrEqual(3);
    for (const then of inEach(words.then, shown).map(wordsOf)) {
      expect(then.length).toBeGreaterThan(0);
      expect(then.length).toBeLessThanOrEqual(7);
    }
    expect(words.slab).toMatch(/^[A-Z]/);
    expect(words.then).toMatch(/^[a-z{]/);
  });

  test('spoken is at most 2 sentences of 12 words, number first, no digits', () => {
    const sentences = sentencesOf(words.spoken);
    expect(sentences.length).toBeLessThanOrEqual(2);
    for (const s of sentences) expect(wordsOf(s).length, s).toBeLessThanOrEqual(12);
    const numbers = wants(words.spoken).filter((n) => n !== 'pot' && n !== 'name');
    if (numbers.length > 0) expect(words.spoken.startsWith(`{${numbers[0]}}`)).toBe(true);
    for (const spoken of inEach(words.spoken, said)) expect(spoken).not.toMatch(/\d|[{}]/);
  });

  test('spoken is over within 8 seconds at 150 words a minute, pause included', () => {
    for (const spoken of inEach(words.spoken, said)) {
      const seconds =
        (spoken.split(/[\s-]+/).length / 150) * 60 + 0.5 * (sentencesOf(spoken).length - 1);
      expect(seconds, spoken).toBeLessThanOrEqual(8);
    }
  });

  test('care is at most 2 sentences of 12 words', () => {
    for (const care of inEach(words.care ?? '', shown)) {
      const sentences = sentencesOf(care);
      expect(sentences.length).toBeLessThanOrEqual(2);
      for (const s of sentences) expect(wordsOf(s).length, s).toBeLessThanOrEqual(12);
    }
  });
});

const words = { ...bakeWords, ...ovenWords };

interface Node {
  readonly states: Readonly<Record<string, Node>>;
  readonly meta?: StageMeta;
}

const metasOf = (node: Node, path = ''): Record<string, StageMeta> =>
  Object.entries(node.states).reduce<Record<string, StageMeta>>((all, [key, inner]) => {
    const name = path === '' ? key : `${path}.${key}`;
    return { ...all, [name]: inner.meta ?? {}, ...metasOf(inner, name) };
  }, {});

/** What the machines themselves say of each stage. */
const metas = [bakeMachine, ovenMachine, laneMachine].reduce<Record<string, StageMeta>>(
  (all, { root }) => ({ ...all, ...metasOf(root as Node) }),
  {},
);

test('a wait names the hour it runs to, on the screen and in the air; nothing else does', () => {
  for (const [stage, w] of stages) {
    const wait = metas[stage]?.waits;
    for (const text of [w.detail, w.spoken])
      expect(wants(text).includes('time'), `${stage}: ${text}`).toBe(wait !== undefined);
    if (wait !== undefined) expect(Object.keys(countdown), stage).toContain(wait);
  }
});

test('every stage that calls says what about, and no other does', () => {
  const calling = stages.map(([stage]) => stage).filter((stage) => metas[stage]?.call);
  expect(Object.keys(callSubjects).sort()).toEqual([...new Set(calling)].sort());
});

test('every stage with a hazard shows a caution', () => {
  const hazards = stages.filter(([stage]) => metas[stage]?.hazard);
  expect(hazards.length).toBeGreaterThan(15);
  for (const [stage, w] of hazards) {
    expect(w.care, stage).toBeDefined();
    if (['hot', 'machine', 'blade'].includes(metas[stage]?.hazard ?? ''))
      expect(w.care, stage).toMatch(/[Ss]tand back|1 m/);
  }
});

test('the fridge foretells no minute', () => {
  for (const stage of ['proof.toFridge', 'proof.retard', 'proof.look', 'oven.queued'] as const)
    expect(wants(Object.values(words[stage]).join(' '))).not.toEqual(
      expect.arrayContaining(['minutes']),
    );
  expect(wants(words['proof.retard'].detail)).toEqual(['time']);
});

test('the lid call stands as agreed', () => {
  expect(words.lift).toMatchObject({
    headline: 'Lift the lid off {pot}',
    detail: 'Away from you: steam. Dry mitts, face back.',
    slab: 'Lid is off',
    then: 'press when the pot is down',
    care: 'Both hands free? Children, stand back.',
  });
  expect(words.lidded.care).toBe('Both hands free? Children, stand back.');
});

test.each([
  [/no tasting/, 'mix.weigh mix.first mix.work bulk.fold shape.divide shape.finalShape'],
  [/[Ww]ash/, 'mix.weigh mix.first mix.work bulk.fold shape.divide shape.finalShape'],
  [/throw it all away/, 'levain.feed levain.look'],
  [/never sealed|sealed jar/, 'levain.feed levain.ripening levain.ripe'],
  [/garlic in oil/, 'bulk.scatter'],
  [/allergen/, 'bulk.scatter cool.handOver'],
  [/35 °C/, 'cool.cooling'],
  [/[Ss]tand back|1 m back/, 'turnOn preheating before score load lidded lift open judge unload'],
  [/[Ss]tand back|1 m back/, 'recover turnOff rescue.tray cool.cooling'],
  [/Grown-up only/, 'turnOn before score load judge unload rescue.tray'],
  [/dry mitts/, 'load judge unload'],
  [/[Bb]lade/, 'score'],
  [/parchment.*215 to 230/, 'turnOn'],
  [/running water 20 minutes, get help/, 'open recover'],
])('the caution %s is shown where it belongs', (caution, at) => {
  for (const stage of at.split(' '))
    expect(inEach(words[stage as keyof typeof words].care ?? '', shown)[0], stage).toMatch(caution);
});
