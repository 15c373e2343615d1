import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { NOTHING_SAID } from '../../src/core/log/about.ts';
import type { FileParts } from '../../src/core/records/log-file.ts';
import { readLogFile } from '../../src/core/records/read-log-file.ts';
import type { LogRecord } from '../../src/core/records/record.ts';
import { makeRow } from '../fakes/records.ts';
import { bodyOf, fileOf, sealed, sumIn } from '../fakes/saved-file.ts';

const NEWEST = 99;

const row = (seq: number, device: string): LogRecord => {
  // As a reader hands it on: of today's version.
  const made = makeRow(seq, `call ü${seq}`);
  const fact = { ...made.fact, id: `${device}-${seq}`, device };
  return { ...made, machineVersion: 12, fact };
};
const PARTS: FileParts = {
  own: [row(1, 'counter'), row(2, 'counter')],
  others: [[row(1, 'harbour')], [row(1, 'jetty'), row(2, 'jetty')]],
  equipment: EQUIPMENT,
  pictures: [{ picture: 'lane-wheat', jpeg: '/9j/Bw==' }],
  circle: [{ circle: 'neighbours', row: { id: 'b', name: 'N 1', watch: [] } }],
  keepsakes: [
    { about: 'counter-1', said: { ...NOTHING_SAID, note: 'Late “ear”', at: 5 } },
    {
      keepsake: {
        ...{ id: 'p', start: 'counter-1', kind: 'photo', at: 5, type: 'image/jpeg' },
        data: '/9j/Bw==',
      },
    },
    {
      keepsake: {
        ...{ id: 'v', start: 'counter-1', kind: 'voice', at: 6, type: 'audio/webm' },
        data: 'AQID',
      },
    },
    { erased: { start: 'counter-1', id: 'q' } },
  ],
};
const FILE = fileOf(PARTS);
const read = (text: string) => readLogFile(text, NEWEST, sumIn(text));
const bytes = new TextEncoder().encode(FILE);
/** As a browser reads a file's text. */
const textOf = (of: Uint8Array): string => new TextDecoder().decode(of);

describe('a saved file', () => {
  it('is read back part by part', () => {
    const { file, reason } = read(textOf(bytes));
    expect(reason).toBeNull();
    expect(file).toEqual({
      records: PARTS.own,
      others: PARTS.others,
      equipment: EQUIPMENT,
      pictures: PARTS.pictures,
      circle: {
        puts: [{ list: 'neighbours', id: 'b', thing: { id: 'b', name: 'N 1', watch: [] } }],
      },
      keepsakes: {
        said: new Map([
          ['counter-1', { about: { ...NOTHING_SAID, note: 'Late “ear”', at: 5 }, erased: null }],
        ]),
        kept: PARTS.keepsakes.flatMap((line) => ('keepsake' in line ? [line.keepsake] : [])),
        gone: new Set(['counter-1/q']),
      },
    });
  });

  it('is refused whole wherever it was cut', () => {
    for (let at = 0; at < bytes.length; at += 1) {
      const { file, reason } = read(textOf(bytes.subarray(0, at)));
      expect(file, `cut at ${at}`).toBeNull();
      expect(reason!.expected, `cut at ${at}`).not.toBe('');
    }
    const line = FILE.indexOf('\n', FILE.length / 2) + 1;
    expect(read(FILE.slice(0, line)).reason).toMatchObject({ line: 1, path: 'cut' });
    expect(read(FILE.slice(0, -1)).reason).toMatchObject({
      path: 'cut',
      expected: '12',
      got: '11',
    });
  });

  it('is refused whole whichever byte of it was changed', () => {
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), (at, by) => {
        const changed = Uint8Array.from(bytes);
        changed[at] = (changed[at]! + by) % 256;
        const { file, reason } = read(textOf(changed));
        expect(file).toBeNull();
        expect(reason!.expected).not.toBe('');
      }),
      { numRuns: 500 },
    );
    // Every byte of the head, and every number that tells its version.
    const end = FILE.indexOf('\n');
    for (let at = 0; at <= end; at += 1)
      for (const other of ['0', '1', '2', '3', ' ', '\r', 'x', '"'])
        if (other !== FILE[at]) {
          const text = FILE.slice(0, at) + other + FILE.slice(at + 1);
          expect(read(text).file, `${other} at ${at}`).toBeNull();
        }
  });

  it('is refused where lines were left out, doubled, put elsewhere or added', () => {
    const lines = FILE.split('\n');
    fc.assert(
      fc.property(fc.nat(lines.length - 2), fc.nat(lines.length - 2), (from, to) => {
        const changed = [...lines];
        const [line] = changed.splice(from, 1);
        expect(read(changed.join('\n')).file).toBeNull();
        changed.splice(to, 0, line!);
        expect(read(changed.join('\n')).file === null).toBe(changed.join() !== lines.join());
        changed.splice(to, 0, line!);
        expect(read(changed.join('\n')).file).toBeNull();
      }),
    );
    expect(read(`${FILE}\n`).reason).toMatchObject({ path: 'sum' });
    expect(read(`${FILE}more`).reason).toMatchObject({ path: 'sum' });
  });

  it('is still read line by line where somebody reckoned its sum anew', () => {
    const body = bodyOf(FILE);
    const put = (at: number, from: string | RegExp, to: string) =>
      read(sealed(body.with(at, body[at]!.replace(from, to)))).reason;
    expect(put(0, '"records":2', '"records":3')).toMatchObject({ line: 2, path: 'rows' });
    expect(put(0, '"records":2', '"records":-2')).toMatchObject({ line: 2, path: 'rows.records' });
    expect(put(0, '"others":[1,2]', '"others":[3,0]')).toMatchObject({ path: 'rows.others' });
    expect(put(0, '"records":2,"others":[1', '"records":1,"others":[2')).toMatchObject({
      line: 10,
      path: 'seq',
    });
    expect(put(0, /"tins":[^,]+/, '"tins":99')).toMatchObject({ line: 2, path: 'equipment.tins' });
    expect(put(1, '/9j/', 'AAAA')).toMatchObject({ line: 3, path: 'jpeg' });
    expect(put(2, '"id":"b"', '"id":7')).toMatchObject({ line: 4, path: 'neighbours.id' });
    expect(put(3, '"at":5', '"at":"5"')).toMatchObject({ line: 5, path: 'keepsakes.said.at' });
    expect(put(4, '/9j/', 'AAAA')).toMatchObject({ line: 6, path: 'keepsakes.keepsake.data' });
    expect(put(4, '"photo"', '"film"')).toMatchObject({ line: 6, path: 'keepsakes.keepsake.kind' });
    expect(put(5, 'audio/webm', 'text/html')).toMatchObject({
      line: 7,
      path: 'keepsakes.keepsake.type',
    });
    expect(put(6, '"id":"q"', '"id":7')).toMatchObject({ line: 8, path: 'keepsakes.erased.id' });
    expect(put(8, '"seq":2', '"seq":3')).toMatchObject({ line: 10, path: 'seq' });
    expect(put(9, '"machineVersion":12', '"machineVersion":100')).toMatchObject({
      line: 11,
      path: 'machineVersion',
    });
    const twice = body.with(11, body[10]!.replace('"seq":1', '"seq":2'));
    expect(read(sealed(twice)).reason).toMatchObject({ line: 13, path: 'fact.id' });
    expect(read(sealed([])).file).toBeNull();
    // What somebody wrote is in no reason.
    expect(JSON.stringify(put(3, '"note":"Late “ear”"', '"note":["Late “ear”"]'))).not.toContain(
      'Late',
    );
  });

  it('never throws, whatever it is handed', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json(), fc.array(fc.json()).map(sealed)), (text) => {
        expect(read(text).file === null || read(text).reason === null).toBe(true);
      }),
    );
  });
});
