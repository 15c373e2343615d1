import { cleanup, render, screen } from '@solidjs/testing-library';
import { createRoot, createSignal } from 'solid-js';
import { afterAll, afterEach, beforeEach, vi } from 'vitest';
import type { Call } from '../../../machines/attention/attention.ts';
import { openHouse } from '../../../src/app/open-house.ts';
import type { EarPerson } from '../../../src/core/ear/person.ts';
import { keyOfPerson } from '../../../src/core/ear/read-person.ts';
import type { Equipment } from '../../../src/core/kitchen/equipment.ts';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import type { House } from '../../../src/screens/house.ts';
import EarPages from '../../../src/screens/kitchen/ear/EarPages.tsx';
import { loadedLater } from '../../fakes/loaded-later.ts';
import { makeMemoryVoices } from '../../fakes/memory-voices.ts';
import type { ToldEar } from '../../fakes/told-ear.ts';
import { makeFakeWorld, type FakeWorld } from '../../fakes/world.ts';
import '../settle.ts';
import { down, tap, turnedClock, up } from '../parts/touching.ts';

/** The ear's pages of one house, with what hears and what keeps. */
export interface EarStand {
  readonly house: House;
  readonly world: FakeWorld;
  readonly ear: ToldEar;
  readonly voices: ReturnType<typeof makeMemoryVoices>;
  readonly ring: (call: Call | null) => void;
  /** How often the way back to the tablet's page was taken. */
  readonly left: () => number;
}

export const CALL: Call = { id: 'a', who: 'a', stage: 'mix.salt', kind: 'act', since: 0 };
const clock = turnedClock();
/** What opens the ear is compiled at its first use. */
const SLOW = { timeout: 10_000 };

/** Registers what each test of these pages begins and ends with. */
export function earTests(): void {
  beforeEach(() => vi.stubGlobal('fetch', async () => new Response('{}')));
  afterEach(() => {
    vi.useRealTimers();
    cleanup();
    vi.restoreAllMocks();
    vi.unstubAllGlobals();
  });
  afterAll(async () => {
    await loadedLater();
  });
}

export const settle = async (): Promise<void> => {
  for (let i = 0; i < 30; i += 1) await Promise.resolve();
};

export async function openEar(
  people: readonly EarPerson[] = [],
  ear: Equipment['ear'] = 'plain',
): Promise<EarStand> {
  const rows = people.map((one) => [keyOfPerson(one.id, 'en'), { ...one, tongue: 'en' }] as const);
  const voices = makeMemoryVoices(new Map(rows));
  const world = makeFakeWorld({ voices });
  const [ringing, ring] = createSignal<Call | null>(null);
  const house = { ...(await createRoot(() => openHouse(world))), ringing };
  house.equip({ ear });
  let left = 0;
  render(() => (
    <PressGround now={clock}>
      <EarPages house={house} onBack={() => (left += 1)} />
    </PressGround>
  ));
  await screen.findByRole('heading', { name: 'The ear' }, SLOW);
  return { house, world, ear: await world.ear(), voices, ring, left: () => left };
}

export const button = (name: RegExp): HTMLElement => screen.getByRole('button', { name });
export const maybeButton = (name: RegExp): HTMLElement | null =>
  screen.queryByRole('button', { name });
export const isOff = (name: RegExp): boolean =>
  button(name).getAttribute('aria-disabled') === 'true';
export const headline = (): string | null => screen.getByRole('heading', { level: 1 }).textContent;
export const slab = (): string | null => document.querySelector('.slab')!.textContent;

export async function press(...names: readonly RegExp[]): Promise<void> {
  for (const name of names) {
    clock.at += 1_100;
    tap(button(name));
    await settle();
  }
}

export async function holdToErase(): Promise<void> {
  const it = button(/^Hold to erase/);
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  clock.at += 1_100;
  down(it);
  vi.advanceTimersByTime(1_300);
  up(it);
  vi.useRealTimers();
  await settle();
}
