import { expect } from 'vitest';
import { Baker } from './baker.ts';
import { expectNoFaults } from './faults.ts';
import { actsOf, expectWhole, logOf, rangOf } from './logged.ts';
import { openApp } from './open-app.ts';
import { Walker } from './walker.ts';

/** A bread's way as it is meant to be, told by hand. */
export interface Way {
  /** As it stands on the start page; undefined: the first bread. */
  readonly bread?: string;
  /** Acts taken back and done again. */
  readonly takeBack: readonly string[];
  readonly acts: readonly string[];
  readonly ovenActs: readonly string[];
  /** Stages that call, in their order. */
  readonly rings: readonly string[];
  /** Headlines of the waits: each is cut short at its half, and that is taken back. */
  readonly waits: readonly string[];
  /** Headlines of the waits and calls in which the page is loaded anew. */
  readonly reload: readonly string[];
}

/** More than any bake has. */
const MOST_STEPS = 400;

/** Walks two loaves of a bread from the start page to its note, and holds the log against the way. */
export async function walkBread(way: Way): Promise<void> {
  const app = await openApp();
  const walker = new Walker(new Baker(app), way);
  await walker.baker.begin('22', way.bread);
  for (let n = 0; n < MOST_STEPS; n += 1) {
    const fact = await walker.goOn();
    if (fact?.kind === 'press' && fact.act === 'noted') break;
  }
  const { halved, reloaded, tookBack } = walker.did;
  expect(tookBack.toSorted()).toEqual([...way.takeBack].toSorted());
  expect(halved).toEqual(way.waits);
  expect(reloaded).toEqual(way.reload);
  const records = await logOf(app);
  const bake = records.flatMap(({ fact }) => (fact.kind === 'start' ? [fact.bake] : []));
  expect(bake).toHaveLength(1);
  expect(actsOf(records, bake[0]!)).toEqual(way.acts);
  expect(actsOf(records, 'oven')).toEqual(way.ovenActs);
  expect(rangOf(records, 'oven', bake[0]!)).toEqual(way.rings);
  const withdrawn = records.filter(({ fact }) => fact.kind === 'takeBack');
  expect(withdrawn).toHaveLength(tookBack.length + halved.length);
  expectWhole(records);
  expectNoFaults(app.faults);
  await app.close();
}
