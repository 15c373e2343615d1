import { cleanup, render, screen, within } from '@solidjs/testing-library';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { MACHINES } from '../../../machines/kitchen/kitchen.ts';
import { newLane } from '../../../machines/kitchen/new-lane.ts';
import { remediesAt } from '../../../src/core/log/remedy-stages.ts';
import { REMEDIES, type Remedy } from '../../../src/core/log/remedies.ts';
import { BAKE_STAGES, JOINS, type BakeStage } from '../../../src/core/records/stage.ts';
import { tellRemedy } from '../../../src/core/speech/tell-remedy.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import RemedySheet from '../../../src/screens/bench/RemedySheet.tsx';
import type { House } from '../../../src/screens/house.ts';
import { tap, turnedClock } from '../parts/touching.ts';
import { atBench, type AtBench } from './at-bench.tsx';

vi.setConfig({ testTimeout: 60_000 });
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const plain = (text: string): string => text.replace(/\s+/g, ' ');

/** The kitchen of a bake as if it stood somewhere else: its stage alone is another. */
const stoodAt = (at: AtBench, stage: BakeStage | 'oven.baking'): House => {
  const kitchen = at.house.kitchen();
  const bake = kitchen.bakes[at.bake]!;
  const [part, state] = (stage === 'oven.baking' ? 'oven.queued' : stage).split('.') as [
    string,
    string,
  ];
  const lanes =
    stage === 'oven.baking'
      ? { 'lane.left': newLane(kitchen, MACHINES, [bake.context.loaves[0]!], kitchen.now) }
      : {};
  const bakes = { ...kitchen.bakes, [at.bake]: { ...bake, value: { [part]: state } } as never };
  return { ...at.house, kitchen: () => ({ ...kitchen, bakes, lanes }) };
};

/** Where each row shows itself first. */
const FIRST: Readonly<Record<Remedy['stage'], BakeStage | 'oven.baking'>> = {
  levain: 'levain.look',
  mix: 'mix.temperature',
  folds: 'bulk.fold',
  bulk: 'bulk.look',
  sheet: 'bulk.spread',
  divide: 'shape.divide',
  preshape: 'shape.preshape',
  basket: 'oven.queued',
  cold: 'proof.look',
  proof: 'proof.poke',
  oven: 'oven.baking',
  cool: 'cool.cooling',
  cut: 'cool.note',
  handOver: 'cool.handOver',
};

describe('something is wrong', () => {
  it('leads through the sheet of each stage to every row of the remedies, in its words', async () => {
    const at = await atBench('mix.weigh');
    const met: Remedy[] = [];
    const clock = turnedClock();
    for (const [stage, where] of Object.entries(FIRST)) {
      const house = stoodAt(at, where);
      const view = render(() => (
        <PressGround now={clock}>
          <RemedySheet house={house} bake={at.bake} onClose={() => undefined} />
        </PressGround>
      ));
      const press = (name: string): void => {
        clock.at += 1_100;
        const buttons = within(view.container).getAllByRole('button');
        tap(buttons.find((one) => plain(one.textContent).startsWith(name))!);
      };
      for (const row of REMEDIES.filter((one) => one.stage === stage)) {
        const told = tellRemedy(row, house.ways(), 0);
        at.said.length = 0;
        press(told.sign);
        const sheet = plain(view.container.textContent);
        expect(plain(within(view.container).getByRole('heading', { level: 1 }).textContent)).toBe(
          told.sign,
        );
        expect(sheet).toContain(plain(told.now ?? 'Nothing to do now.'));
        expect(sheet).not.toMatch(/[{}]/);
        if (told.next) expect(sheet).toContain(plain(told.next));
        if (told.care) expect(sheet).toContain(plain(told.care));
        expect(at.said).toEqual(told.care ? [told.care] : []);
        met.push(row);
        press('Other signs');
      }
      view.unmount();
    }
    expect(new Set(met)).toEqual(new Set(REMEDIES));
    expect(met).toHaveLength(31);
  });

  it.each(['levain.feed', 'bulk.proving', 'proof.retard'] as const)(
    'is a press of the bench at %s, and leads back to it',
    async (from) => {
      const at = await atBench(from);
      await at.press('More');
      await at.press('Something is wrong');
      const [row] = remediesAt({ bake: from, oven: 'off', lanes: [] })[0]!;
      await at.press(row!.words.sign);
      expect(await screen.findByText('Next time')).toBeTruthy();
      await at.press('Back to the bench');
      await vi.waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
      expect(at.facts().map(({ kind }) => kind)).toEqual(['start']);
    },
  );

  it('is not offered before a bake has begun to be made', async () => {
    const at = await atBench('levain.feed');
    for (const stage of ['read.plan', 'read.list'] as const)
      expect(remediesAt({ bake: stage, oven: 'off', lanes: [] })).toEqual([]);
    expect(stoodAt(at, 'read.plan').kitchen().bakes[at.bake]).toBeTruthy();
  });
});

describe('the remedies of a stage', () => {
  const at = (bake: BakeStage | null, oven = 'off', lanes: readonly string[] = []) =>
    remediesAt({ bake, oven, lanes }).map((group) => group.map(({ stage }) => stage));

  it('are there wherever bread is made, six to a group at most', () => {
    for (const stage of BAKE_STAGES) {
      const groups = at(stage);
      const made = !/^(read|done|ended|rescue)/.test(stage);
      if (made) expect(groups.length, stage).toBeGreaterThan(0);
      for (const group of groups) {
        expect(group.length).toBeLessThanOrEqual(6);
        if (stage !== 'rescue.tray') expect(group.length).toBeGreaterThan(1);
      }
    }
    for (const join of JOINS) expect(at(join)).not.toEqual([]);
  });

  it('are the oven’s while a loaf of it bakes, and the door’s of those that wait', () => {
    expect(at('oven.queued', 'poke')).toEqual([['basket', 'cold', 'cold', 'proof']]);
    const both = at('oven.queued', 'baking', ['lidded']);
    expect(both[0]).toEqual(Array(6).fill('oven'));
    expect(both[1]).toEqual(['basket', 'cold', 'cold', 'proof']);
    expect(at('oven.queued', 'turnOff', ['unload'])).toEqual([Array(6).fill('oven')]);
    expect(at(null)).toEqual([]);
  });
});
