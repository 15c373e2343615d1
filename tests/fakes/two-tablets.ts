import { createRoot } from 'solid-js';
import { vi } from 'vitest';
import { openHouse } from '../../src/app/open-house.ts';
import type { House } from '../../src/screens/house.ts';
import { makeMemoryCircle } from './memory-circle.ts';
import { makeMemoryKeepsakes } from './memory-keepsakes.ts';
import { makeMemoryOtherLogs } from './memory-other-logs.ts';
import { makeMemoryPictures } from './memory-pictures.ts';
import { makeMemoryStore } from './memory-store.ts';
import { makeFakeWorld, type FakeWorld } from './world.ts';

/** A tablet whose disk can be wiped, and whose page opens anew. */
export interface Tablet {
  readonly name: string;
  disk: ReturnType<typeof freshDisk>;
  world: FakeWorld;
  house: House;
}

const freshDisk = () => ({
  store: makeMemoryStore(),
  circle: makeMemoryCircle(),
  pictures: makeMemoryPictures(),
  keepsakes: makeMemoryKeepsakes(),
  otherLogs: makeMemoryOtherLogs(),
});

/** A loaded machine may be long in importing. */
const WITHIN = { timeout: 20_000 };

let given = 0;

/** The page as it comes up over its disk. */
export async function opened(tablet: Pick<Tablet, 'name' | 'disk'>, at?: number): Promise<Tablet> {
  const world: FakeWorld = {
    ...makeFakeWorld({ ...tablet.disk, ...(at === undefined ? {} : { at }) }),
    ids: { device: tablet.name, next: () => `${tablet.name}-${(given += 1)}` },
  };
  const house = await createRoot(() => openHouse(world));
  return { name: tablet.name, disk: tablet.disk, world, house };
}

export const newTablet = (name: string): Promise<Tablet> => opened({ name, disk: freshDisk() });

/** The same tablet with an empty disk. */
export const wiped = ({ name, house }: Tablet): Promise<Tablet> =>
  opened({ name, disk: freshDisk() }, house.now());

/** One more bake on it, joined at the bulk; its start's id. Wants the formulas to be served. */
export async function bakes({ house }: Tablet): Promise<string> {
  const formula = await vi.waitFor(() => {
    const found = house.formulas().find((one) => one.formula !== null);
    if (!found?.formula) throw new Error('No formula yet.');
    return found.formula;
  }, WITHIN);
  const bake = await house.begin({ formula, loaves: 2, kitchen: 22, from: 'bulk.proving' });
  const start = house.records().findLast(({ fact }) => fact.kind === 'start' && fact.bake === bake);
  if (!start) throw new Error('No bake began.');
  return start.fact.id;
}

/** What a download would hold. Stubs what hands it on until the test's globals are unstubbed. */
export async function savedBy({ house }: Tablet, names = false): Promise<string> {
  const files: Blob[] = [];
  vi.stubGlobal('document', { createElement: () => ({ click: () => undefined }) });
  const address = vi
    .spyOn(URL, 'createObjectURL')
    .mockImplementation((file) => `blob:loafward/${files.push(file as Blob)}`);
  house.saveAsFile(names);
  await vi.waitFor(() => {
    if (files.length === 0) throw new Error('Nothing was saved.');
  }, WITHIN);
  address.mockRestore();
  return files[0]!.text();
}

/** Takes a file in as the page does, and opens the page anew; what it was told before. */
export async function takes(
  tablet: Tablet,
  file: string,
): Promise<{ readonly tablet: Tablet; readonly comes: string }> {
  const { file: found, why } = await tablet.house.readFile(file);
  if (found === null) throw new Error(why);
  await tablet.house.takeFile(found);
  return { tablet: await opened(tablet, tablet.house.now()), comes: found.comes };
}
