import { describe, expect, it } from 'vitest';
import { MACHINE_VERSION as TODAY } from '../../machines/kitchen/kitchen.ts';
import { readLogFile } from '../../src/core/records/read-log-file.ts';
import { readRecord } from '../../src/core/records/read-record.ts';
import { makeRow } from '../fakes/records.ts';
import { sealed, sumIn } from '../fakes/saved-file.ts';

const DEEP = `${'['.repeat(20_000)}${']'.repeat(20_000)}`;
/** It is an object, and no text can be made of it. */
const UNTOLD = '{"toString":1,"valueOf":1}';

const ring: Record<string, unknown> = {};
ring['ring'] = ring;

describe('a row of the log', () => {
  it.each([
    ['a number too long for JSON', 12n],
    ['a ring', ring],
    ['a deep nest', JSON.parse(DEEP) as unknown],
    ['what no text can be made of', JSON.parse(UNTOLD) as unknown],
  ])('with %s in a field is refused by its name', (_, odd) => {
    for (const name of ['seq', 'machineVersion', 'position', 'fact'] as const) {
      const found = readRecord({ ...makeRow(1), [name]: name === 'position' ? 7 : odd }, TODAY);
      expect('reason' in found && found.reason.path).toMatch(new RegExp(`^${name}`));
    }
  });
});

describe('a saved file', () => {
  const read = (text: string) => readLogFile(text, TODAY, sumIn(text));

  it.each([
    ['version', `{"kitchenFile":${UNTOLD}}\n`],
    ['version, deep', `{"kitchenFile":${DEEP}}\n`],
    ['count of rows', `{"kitchenFile":3,"equipment":{},"circle":${UNTOLD}}\n`],
  ])('whose head has no %s that can be told is refused in its first line', (_, text) => {
    expect(read(text).reason).toMatchObject({ line: 1 });
  });

  it('with a row as deep as no program writes is refused: it could not be saved again', () => {
    const { fact, ...rest } = makeRow(1);
    const row = JSON.stringify({ ...rest, fact: { ...fact, more: '…' } }).replace('"…"', DEEP);
    const contents = {
      equipment: {},
      rows: { pictures: 0, circle: 0, keepsakes: 0, records: 1, others: [] },
    };
    expect(read(sealed([JSON.stringify(contents), row])).reason).toMatchObject({ line: 3 });
    expect(read(row).reason).toMatchObject({ line: 1 });
  });
});
