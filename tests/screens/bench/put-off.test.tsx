import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import OverAll from '../../../src/app/OverAll.tsx';
import { MINUTE } from '../../../src/core/units.ts';
import { unbroken } from '../../../src/parts/unbroken.ts';
import type { House } from '../../../src/screens/house.ts';
import { makeHeardSpeaker } from '../../fakes/heard-speaker.ts';
import { makeFakeWorld } from '../../fakes/world.ts';
import { onBench, salting, type OnBench } from './on-bench.tsx';

const over = (house: House) => <OverAll house={house} />;

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const putOff = (): HTMLElement | null => screen.queryByRole('button', { name: /^In 2 minutes/ });
const snoozes = ({ facts }: OnBench) => facts().filter(({ kind }) => kind === 'snoozed');

/** The first touch anywhere, which only hushes. */
const hush = async ({ house, touch }: OnBench): Promise<void> => {
  expect(house.ringing()).not.toBeNull();
  const before = house.records().length;
  touch(screen.getAllByRole('heading', { level: 1 }).at(-1)!);
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  expect(house.records().length - before).toBe(1);
};

it.each([
  ['armed', false, null],
  ['locked', true, 'Sound off'],
  ['unavailable', true, 'No sound'],
] as const)('tells that it will not be heard: %s', async (state, isMute, words) => {
  const at = await salting();
  const { house, world } = at;
  // A kitchen that goes by sight has never let it sound.
  house.equip({ sound: { at: 0, heard: 'sightOnly' } });
  world.sound.become(state);
  await hush(at);
  const panel = putOff()!;
  const mark = panel.querySelector('.ear-mark');
  expect(mark !== null).toBe(isMute);
  expect(mark?.getAttribute('aria-label') ?? null).toBe(words);
  expect(panel.textContent.trim()).toBe(unbroken('In 2 minutes 2 left'));
});

it('is offered once a touch has hushed the call, twice, and the act stays on show', async () => {
  const speaker = makeHeardSpeaker();
  const at = await salting({ over, world: { ...makeFakeWorld(), speaker } });
  const { house, world, press, said, turn } = at;
  expect(house.ringing()).toMatchObject({ kind: 'act' });
  expect(putOff()).toBeNull();
  for (const [left, words] of [
    ['2 left', 'I call again in 2 minutes.'],
    ['1 left', 'I call one last time, in 2 minutes.'],
  ] as const) {
    await hush(at);
    expect(putOff()?.textContent).toBe(unbroken(`In 2 minutes ${left}`));
    await press(/^In 2 minutes/);
    await vi.waitFor(() => expect(said.at(-1)).toBe(words));
    expect(putOff()).toBeNull();
    const until = house.now() + 2 * MINUTE;
    expect(document.querySelector('.ear')?.textContent).toContain(`Calls at ${house.hour(until)}`);
    expect(screen.getByRole('heading', { level: 1 }).textContent).toMatch(/salt/i);
    turn(1);
    expect(house.ringing()).toBeNull();
    turn(1);
    expect(house.ringing()).toMatchObject({ stage: 'mix.salt' });
    expect(world.sound.ringing()).toHaveLength(1);
    // Known already: what is said is what it still waits for.
    await vi.waitFor(() =>
      expect(speaker.said.at(-1)?.words).toBe('Still waiting: the salt goes in.'),
    );
  }
  await hush(at);
  expect(putOff()).toBeNull();
  expect(snoozes(at)).toHaveLength(2);
});

it('put off by mistake is taken back by the control that takes back any press', async () => {
  const at = await salting({ over });
  const { house, press } = at;
  await hush(at);
  await press(/^In 2 minutes/);
  await vi.waitFor(() => expect(snoozes(at)).toHaveLength(1));
  await press(/^Take that back/);
  await vi.waitFor(() => expect(house.ringing()).toMatchObject({ stage: 'mix.salt' }));
  await hush(at);
  expect(putOff()?.textContent).toContain('2 left');
});

it('arms the sound in the same tap: who wants to be called again wants to hear it', async () => {
  const at = await salting({ over });
  const { house, press, world } = at;
  world.sound.become('locked');
  await hush(at);
  await press(/^In 2 minutes/);
  await vi.waitFor(() => expect(snoozes(at)).toHaveLength(1));
  expect(house.sound()).toBe('armed');
});

it('is pressed by a key as well, and the slab by a tap while it stands', async () => {
  const at = await salting({ over });
  const { house, clock, touch, turn } = at;
  await hush(at);
  clock.at += 1_100;
  putOff()!.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
  await vi.waitFor(() => expect(snoozes(at)).toHaveLength(1));
  turn(2);
  await hush(at);
  touch(document.querySelector<HTMLElement>('.slab')!);
  await vi.waitFor(() => expect(house.records().at(-1)?.fact).toMatchObject({ item: 'salt' }));
});

it('is never offered for a hot call', async () => {
  const at = await onBench('bulk.proving', { over });
  const { house, turn } = at;
  const until = house.now() + MINUTE;
  await house.take({ kind: 'timer', timer: 't1', name: 'nuts', until, call: 'hot' });
  turn(1);
  expect(house.ringing()).toMatchObject({ kind: 'hot' });
  await hush(at);
  expect(screen.queryByRole('dialog', { name: /Nuts/ })).not.toBeNull();
  expect(putOff()).toBeNull();
});

it('puts off a timer of yours: its sheet goes, and comes again when it calls', async () => {
  const { house, press, touch, turn } = await onBench('bulk.proving', { over });
  const until = house.now() + MINUTE;
  await house.take({ kind: 'timer', timer: 't1', name: 'other', until, call: 'act' });
  const dialog = () => screen.queryByRole('dialog', { name: /Something else/ });
  turn(1);
  expect(dialog()).not.toBeNull();
  expect(putOff()).toBeNull();
  touch(dialog()!);
  await vi.waitFor(() => expect(house.ringing()).toBeNull());
  await press(/^In 2 minutes/);
  await vi.waitFor(() => expect(dialog()).toBeNull());
  turn(2);
  expect(dialog()).not.toBeNull();
  expect(house.ringing()).toMatchObject({ who: 'timer' });
});
