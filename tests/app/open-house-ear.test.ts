import { afterEach, expect, it, vi } from 'vitest';
import { openHouseEar } from '../../src/app/open-house-ear.ts';
import { EAR_WEIGHT } from '../../src/core/ear/ear-weight.ts';
import { speakIn } from '../../src/core/speech/tongue.ts';
import { makeMemoryVoices } from '../fakes/memory-voices.ts';
import { aPerson, aTake } from '../fakes/said-phrases.ts';
import { makeToldEar } from '../fakes/told-ear.ts';

afterEach(() => speakIn('en'));

const open = async (rows = makeMemoryVoices(), holds = true) => {
  const choose = vi.fn();
  const ear = makeToldEar();
  return { house: await openHouseEar(ear, rows, holds, choose), rows, ear, choose };
};
const boat = aPerson(['done'], { mark: 'boat' });
const sun = aPerson(['yes', 'no'], { mark: 'sun', child: true });

it('keeps people once they are written, after a reload too, and one anew in place of the old', async () => {
  const { house, rows } = await open();
  expect(house.people()).toEqual([]);
  const writing = house.keep(boat);
  expect(house.people()).toEqual([]);
  expect(await writing).toBeNull();
  await house.keep(sun);
  const more = aPerson(['done', 'yes'], { mark: 'boat' });
  expect(await house.keep(more)).toBeNull();
  expect(house.people()).toEqual([sun, more]);
  expect((await open(rows)).house.people()).toEqual([more, sun]);
  expect([...rows.rows.keys()]).toEqual(['en/boat', 'en/sun']);
});

it('forgets one and leaves the others', async () => {
  const { house, rows } = await open();
  await house.keep(boat);
  await house.keep(sun);
  expect(await house.forget('boat')).toBeNull();
  expect(house.people()).toEqual([sun]);
  expect([...rows.rows.keys()]).toEqual(['en/sun']);
});

it('forgets all without leaving a row, whoever could read it, and turns the ear off', async () => {
  const rows = makeMemoryVoices(
    new Map<string, unknown>([
      ['en/boat', { ...boat, tongue: 'en' }],
      ['fr/moon', { ...aPerson(['done'], { mark: 'moon' }), tongue: 'fr' }],
      ['en/leaf', 'no voice'],
    ]),
  );
  const { house, choose } = await open(rows);
  expect(house.people()).toEqual([boat]);
  await house.keep(sun);
  expect(await house.forgetAll()).toBeNull();
  expect(house.people()).toEqual([]);
  expect([...rows.rows]).toEqual([]);
  expect(choose.mock.calls).toEqual([['off']]);
});

it('knows those who have spoken in this tongue, each tongue beside the other', async () => {
  const { house, rows } = await open();
  await house.keep(boat);
  speakIn('de');
  const { house: german } = await open(rows);
  expect(german.people()).toEqual([]);
  const fertig = aPerson(['done', 'ready'], { mark: 'boat' });
  await german.keep(fertig);
  expect([...rows.rows.keys()]).toEqual(['en/boat', 'de/boat']);
  await german.forget('boat');
  speakIn('en');
  expect((await open(rows)).house.people()).toEqual([boat]);
});

it('tells that it is full and changes nothing', async () => {
  const { house, rows, choose } = await open();
  await house.keep(boat);
  rows.full = true;
  expect(await house.keep(sun)).toBe('full');
  expect(await house.forget('boat')).toBe('full');
  expect(await house.forgetAll()).toBe('full');
  expect([house.people(), rows.rows.size, choose.mock.calls.length]).toEqual([[boat], 1, 0]);
});

it('writes nothing in a page that only shows the kitchen, nor where the disk is shut', async () => {
  const { house, rows } = await open(makeMemoryVoices(), false);
  expect(await house.keep(boat)).toBe('closed');
  expect(rows.rows.size).toBe(0);
  const shut = makeMemoryVoices();
  const { house: other } = await open(shut);
  vi.spyOn(shut, 'write').mockRejectedValue(new Error('shut'));
  expect(await other.keep(boat)).toBe('closed');
  expect(other.people()).toEqual([]);
});

it('hands on what is listened for and taken, and tells what the learned ear weighs', async () => {
  const { house, ear } = await open();
  expect(house.weighs).toBe(EAR_WEIGHT);
  ear.here = false;
  expect(await house.fetch('learned')).toBe(false);
  const tell = vi.fn();
  const ask = { engine: 'plain', people: [boat], active: ['done'] } as const;
  const stop = house.listen(ask, tell);
  expect([ear.asked, tell.mock.calls]).toEqual([ask, [[{ kind: 'open' }]]]);
  stop();
  expect(ear.asked).toBeNull();
  const take = house.take('plain', () => undefined);
  ear.said(aTake());
  expect(await take.over).toEqual(aTake());
});
