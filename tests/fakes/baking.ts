import { readFileSync } from 'node:fs';
import { createRoot } from 'solid-js';
import { vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import type { Formula } from '../../src/core/formula/formula.ts';
import type { BakeStage } from '../../src/core/records/stage.ts';
import type { House } from '../../src/screens/house.ts';
import type { FakeWorld } from './world.ts';

/** The formulas that come with the program are served from their folder; undo with `unstubAllGlobals`. */
export const serveFormulas = (): void =>
  void vi.stubGlobal(
    'fetch',
    async (path: string) =>
      new Response(readFileSync(`assets/formulas/${path.split('/').at(-1)}`, 'utf8')),
  );

/** A house whose formulas have come, and the first of them. Wants `serveFormulas`. */
export async function openBaking(world: FakeWorld): Promise<{
  readonly house: House;
  readonly formula: Formula;
  /** A bake of it in a kitchen of 22 °C, joined where it is said; its id. */
  begin(from: BakeStage, loaves?: number): Promise<string>;
}> {
  const house = await createRoot(() => openHouse(world));
  const formula = await vi.waitFor(
    () => {
      const found = house.formulas().find((one) => one.formula !== null);
      if (!found?.formula) throw new Error('No formula yet.');
      return found.formula;
    },
    { timeout: 20_000 },
  );
  return {
    house,
    formula,
    async begin(from, loaves = 2) {
      const id = await house.begin({ formula, loaves, kitchen: 22, from });
      if (id === null) throw new Error(`No bake begins at ${from}.`);
      return id;
    },
  };
}
