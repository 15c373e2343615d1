import { cleanup } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { atBench } from './at-bench.tsx';

vi.setConfig({ testTimeout: 30_000 });

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const detail = (): string =>
  document.querySelector('.act-detail')?.textContent.replaceAll('\u00a0', ' ') ?? 'no detail';
const wait = (check: () => void) => vi.waitFor(check, 10_000);

it('says where the filling is scattered what its cold costs, once it was measured', async () => {
  const at = await atBench('bulk.spread');
  const bake = at.bake;
  const reading = { what: 'fillingTemperature', celsius: 4 } as const;
  await at.house.take({ kind: 'reading', by: 'hand', bake, reading });
  await at.press('It’s spread');
  await wait(() =>
    expect(detail()).toMatch(/^Cold filling slows it: about \d+ min more\. Dry and/),
  );
  await wait(() =>
    expect(at.heard.join(' ')).toMatch(
      /Scatter the filling\. Cold filling slows it: about .* minutes more\./,
    ),
  );
  // The caution is said with it: nothing of what the step says is lost.
  expect(at.heard.join(' ')).toContain('allergens');
});

it('says nothing of a filling as warm as the dough', async () => {
  const at = await atBench('bulk.scatter');
  await wait(() => expect(detail()).toContain('Leave a 3 cm bare edge.'));
  expect(detail()).not.toContain('slows');
  expect([at.said, at.heard.join(' ')]).toEqual([[], expect.not.stringContaining('slows')]);
});
