import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { OPEN_MS } from '../../machines/listening/listening.ts';
import { stageOf } from '../../machines/kitchen/stage-of.ts';
import { byEar, person, soon } from './by-ear.tsx';

beforeEach(() => {
  // What is on the page shows; nothing is laid out here.
  vi.spyOn(Element.prototype, 'getClientRects').mockReturnValue([{}] as never);
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const headline = (words: RegExp) =>
  screen.findByRole('heading', { name: words }, { timeout: 10_000 });

describe('a bake by voice', () => {
  it('is walked, its dough measured and its last press taken back', async () => {
    const at = await byEar('mix.first');
    at.nudge();
    await at.hear('done');
    await soon(() => expect(at.facts().at(-1)).toMatchObject({ act: 'mixed' }));
    // In a wait nobody says that it is done.
    await soon(() => expect(at.ear.asked?.active[0]).toBe('longer'));
    expect(at.ear.asked!.active).not.toContain('done');
    await at.hear('longer');
    await soon(() => expect(at.said.at(-1)).toMatch(/minutes/));
    at.turn(30);
    await soon(() => expect(at.house.ringing()?.stage).toBe('mix.salt'));
    expect(at.ear.asked).toBeNull();
    at.touch(document.querySelector('.slab')!);
    await soon(() => expect(at.house.ringing()).toBeNull());
    for (let n = 0; stageOf(at.house.kitchen().bakes[at.bake]!) === 'mix.salt'; n += 1) {
      expect(n).toBeLessThan(5);
      const before = at.facts().length;
      await at.hear('done');
      await soon(() => expect(at.facts()).toHaveLength(before + 1));
    }
    await at.hear('done');
    await soon(() => expect(at.facts().at(-1)).toMatchObject({ act: 'workedIn' }));
    await at.hear('reading');
    await screen.findByRole('button', { name: '7' }, { timeout: 10_000 });
    await at.hear('two');
    for (const digit of ['four', 'point', 'five'] as const) at.say(digit);
    expect(document.querySelector('.pad-typed')!.textContent).toBe('24.5');
    expect(at.facts().at(-1)).toMatchObject({ act: 'workedIn' });
    at.wait(OPEN_MS);
    expect(at.said.at(-1)).toBe('24.5 °C. Say yes or no.');
    await soon(() => expect(at.ear.asked?.active).toEqual(['yes', 'no']));
    at.say('yes');
    await soon(() => expect(at.facts().at(-1)).toMatchObject({ kind: 'reading', by: 'hand' }));
    await at.hear('takeBack');
    await soon(() => expect(at.facts().at(-1)).toMatchObject({ kind: 'takeBack' }));
    expect(stageOf(at.house.kitchen().bakes[at.bake]!)).toBe('mix.temperature');
  });
});
