import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { BAKE_STAGES, OVEN_STAGES } from '../../../src/core/records/stage.ts';
import { controls } from '../../../src/core/speech/words/controls.ts';
import { earlyPress } from '../../../src/screens/bench/early.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { tap } from '../parts/touching.ts';
import { atBench, lastFact } from './at-bench.tsx';

vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const readyNow = () => screen.queryByRole('button', { name: controls.readyNow });
const headline = () => document.querySelector('.act-headline')!.textContent;

it('goes on out of a wait in one press, which is one fact, and back in one', async () => {
  const at = await atBench('bulk.proving');
  const [wait, before] = [headline(), at.facts().length];
  const ends = document.querySelector('.times-ends')!.textContent;
  await at.press(controls.readyNow);
  expect(await lastFact(at, 'press')).toMatchObject({ who: at.bake, act: 'bulkReady' });
  expect([at.presses, at.facts().length - before]).toEqual([1, 1]);
  expect(headline()).not.toBe(wait);
  expect(readyNow()).toBeNull();
  await at.press(controls.takeBack);
  await lastFact(at, 'takeBack');
  expect(headline()).toBe(wait);
  expect(document.querySelector('.times-ends')!.textContent).toBe(ends);
  expect(readyNow()).not.toBeNull();
});

it('is not pressed by what brought it: it arms as everything new does', async () => {
  const at = await atBench('bulk.proving');
  const before = at.facts().length;
  tap(readyNow()!);
  await Promise.resolve();
  expect(at.facts()).toHaveLength(before);
});

it('stands in waits that end in a look, never at a hot oven, nor in the fridge over what spoils', async () => {
  const at = await atBench('bulk.proving');
  const focus = focusOn(at.house.kitchen(), at.bake)!;
  const may = [...BAKE_STAGES, ...OVEN_STAGES].filter((stage) => earlyPress(focus, stage));
  expect(may).toEqual([
    'levain.ripening',
    'bulk.proving',
    'proof.retard',
    'proof.warm',
    'proof.soon',
  ]);
  const { bake } = focus;
  const { recipe } = bake.context;
  const fillings = recipe.formula.fillings.map((one) => ({ ...one, keeps: 'perishable' as const }));
  const spoils = { ...recipe, formula: { ...recipe.formula, fillings } };
  const context = { ...bake.context, recipe: spoils };
  const cheese = { ...focus, bake: { ...bake, context } as typeof bake };
  expect(earlyPress(cheese, 'proof.retard')).toBeNull();
  expect(earlyPress(cheese, 'bulk.proving')).not.toBeNull();
});

it('stands in no wait that the slab itself goes on out of', async () => {
  await atBench('bulk.between');
  expect(document.querySelector('.times-number')).not.toBeNull();
  expect(readyNow()).toBeNull();
});

it('leaves six presses on the screen, where the sound is on', async () => {
  const at = await atBench('proof.retard');
  at.house.armSound();
  await vi.waitFor(() => expect(at.house.sound()).not.toBe('locked'));
  const all = [...document.querySelectorAll('.bench .pressable')].map((el) => el.textContent);
  expect(all.filter((text) => text !== '')).toHaveLength(6);
});
