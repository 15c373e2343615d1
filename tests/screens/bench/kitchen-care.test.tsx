import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { speakOf } from '../../../src/app/speak-of.ts';
import { isRough } from '../../../src/core/formula/round-for-scale.ts';
import { EQUIPMENT } from '../../../src/core/kitchen/equipment.ts';
import { weighView } from '../../../src/screens/bench/weigh-view.ts';
import { focusOn } from '../../../src/screens/focus.ts';
import { atBench } from './at-bench.tsx';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const SHARE = /Mix 2 bowls of 9[12]\d\sg\. Start them 6\smin apart\./;

it('says at the scale that the dough wants two bowls, on the screen and aloud', async () => {
  const at = await atBench('mix.weigh', 2);
  await screen.findByRole('heading', { level: 1 });
  expect(screen.queryByText(SHARE)).toBeNull();
  at.house.equip({ bowls: { ...EQUIPMENT.bowls, litres: 3 } });
  expect(await screen.findByText(SHARE)).toBeTruthy();
  const spoken = speakOf(
    { who: at.bake, stage: 'mix.weigh' },
    at.house.kitchen(),
    () => '',
    at.house.ways(),
    at.house.equipment(),
  );
  expect(spoken).toMatch(SHARE);
}, 20_000);

it('weighs by the scale that is there, and says where its steps are rough', async () => {
  const at = await atBench('mix.weigh', 2);
  at.house.equip({ scale: 5 });
  const second = await at.begin('mix.salt');
  const { lines } = at.house.kitchen().bakes[second]!.context.recipe;
  for (const { division, grams } of lines.second) {
    expect(division).toBeGreaterThanOrEqual(5);
    expect(grams % 5).toBe(0);
  }
  const salt = lines.second.find(({ item }) => item === 'salt')!;
  expect(isRough(salt)).toBe(true);
  const asked = weighView(focusOn(at.house.kitchen(), second)!, at.house.ways());
  expect(asked?.detail).toBe('Your scale is rough for so little. Use a finer one.');
  expect(asked?.spoken).toContain('Use a finer one.');
}, 20_000);
