import { expect, it } from 'vitest';
import { keepsakeLines, takeKeepsakes } from '../../src/app/keepsake-files.ts';
import { openKeepsakes } from '../../src/app/open-keepsakes.ts';
import { readSavedKeepsakes } from '../../src/core/log/saved-keepsakes.ts';
import { makeMemoryKeepsakes, type MemoryKeepsakes } from '../fakes/memory-keepsakes.ts';
import { jpeg } from '../fakes/memory-pictures.ts';
import { makeFakeWorld } from '../fakes/world.ts';

const ALL = { notes: true, photos: true, voices: true };
const open = (rows: MemoryKeepsakes) => openKeepsakes(rows, makeFakeWorld(), () => undefined);
const fileOf = async (rows: MemoryKeepsakes) => {
  const text = (await keepsakeLines(rows, ALL)).map((line) => JSON.stringify(line));
  return readSavedKeepsakes(text.map((line) => JSON.parse(line) as unknown)).saved!;
};
const begun = async () => {
  const rows = makeMemoryKeepsakes();
  const log = await open(rows);
  await log.say('f-1', { note: 'Sour', tags: ['best'] });
  await log.takePhoto('f-1', new Blob([jpeg(...Array(300).keys())]));
  await log.takeVoice('f-1', { type: 'audio/webm', bytes: Uint8Array.of(1, 2, 0, 255) });
  return { rows, log };
};

it('goes out and comes into an empty tablet as it was, byte for byte', async () => {
  const { rows } = await begun();
  const other = makeMemoryKeepsakes();
  await takeKeepsakes(other, await fileOf(rows));
  expect(other.said).toEqual(rows.said);
  expect(other.kept).toEqual(rows.kept);
});

it('reads no voice where none is to go out', async () => {
  const { rows } = await begun();
  const lines = await keepsakeLines(rows, { ...ALL, voices: false });
  expect(lines.map((line) => Object.keys(line)[0])).toEqual(['about', 'keepsake']);
  expect(JSON.stringify(lines)).not.toContain('voice');
});

it('brings nothing back that was erased after the file was saved', async () => {
  const { rows, log } = await begun();
  const file = await fileOf(rows);
  const { id } = (await log.keepsakes('f-1'))[0]!;
  await log.erase('f-1', id);
  await takeKeepsakes(rows, file);
  expect((await log.keepsakes('f-1')).map(({ kind }) => kind)).toEqual(['voice']);
  await log.eraseAll('f-1');
  await takeKeepsakes(rows, file);
  const again = await open(rows);
  expect(await again.keepsakes('f-1')).toEqual([]);
  expect(again.abouts()['f-1']?.note).toBe('');
});

it('is undone as if it had never come, and not begun where the disk is full', async () => {
  const { rows } = await begun();
  const file = await fileOf(rows);
  const here = makeMemoryKeepsakes();
  const log = await open(here);
  await log.say('f-1', { note: '', hidden: true });
  const was = [new Map(here.said), new Map(here.kept)];
  here.fail('full');
  await expect(takeKeepsakes(here, file)).rejects.toMatchObject({ trouble: 'full' });
  here.fail(null);
  expect([here.said, here.kept]).toEqual(was);
  const undo = await takeKeepsakes(here, file);
  expect(here.kept.size).toBe(2);
  await undo();
  expect([here.said, here.kept]).toEqual(was);
});

it('writes over no row that cannot be read here', async () => {
  const { rows } = await begun();
  const file = await fileOf(rows);
  const here = makeMemoryKeepsakes();
  here.said.set('f-1', 'odd');
  const key = [...rows.kept.keys()][0]!;
  here.kept.set(key, 'odd');
  await takeKeepsakes(here, file);
  expect(here.said.get('f-1')).toBe('odd');
  expect(here.kept.get(key)).toBe('odd');
  expect(here.kept.size).toBe(2);
});
