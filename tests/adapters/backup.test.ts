// @vitest-environment jsdom
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { exportLog } from '../../src/adapters/backup.ts';
import { EQUIPMENT } from '../../src/core/kitchen/equipment.ts';
import { jpeg } from '../fakes/memory-pictures.ts';
import { makeRow } from '../fakes/records.ts';

const made: Blob[] = [];
const clicked: { href: string; download: string }[] = [];
const revoked = vi.fn();

beforeEach(() => {
  made.length = 0;
  clicked.length = 0;
  revoked.mockClear();
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  // jsdom has no blob URLs and follows no link.
  URL.createObjectURL = (blob) => `blob:loafward/${made.push(blob as Blob)}`;
  URL.revokeObjectURL = revoked;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
    this: HTMLAnchorElement,
  ) {
    clicked.push({ href: this.href, download: this.download });
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

const text = (blob: Blob) =>
  new Promise<string>((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.readAsText(blob);
  });

it('downloads one record a line, which read back as they were', async () => {
  const rows = [makeRow(1), makeRow(2, 'two\nlines “and” a quote"'), makeRow(3)];
  exportLog(rows, EQUIPMENT);
  expect(clicked).toEqual([{ href: 'blob:loafward/1', download: 'loafward-log.jsonl' }]);
  const lines = (await text(made[0]!)).split('\n');
  expect(lines.pop()).toBe('');
  expect(lines.map((line) => JSON.parse(line) as unknown)).toEqual([
    { kitchenFile: 1, equipment: EQUIPMENT },
    ...rows,
  ]);
});

it('has the pictures behind its head, and a version that an older program refuses, for it would lose them', async () => {
  const pictures = new Map([
    ['lane-wheat', { now: jpeg(7), before: jpeg(8) }],
    ['olive-seed', { now: null, before: jpeg(9) }],
  ]);
  exportLog([makeRow(1)], EQUIPMENT, pictures);
  const lines = (await text(made[0]!)).trim().split('\n');
  expect(lines.map((line) => JSON.parse(line) as unknown)).toEqual([
    { kitchenFile: 2, equipment: EQUIPMENT },
    { picture: 'lane-wheat', jpeg: '/9j/Bw==' },
    makeRow(1),
  ]);
});

it('has the circle behind the pictures, and how many rows of it follow, for a cut file lacks some', async () => {
  const row = { circle: 'neighbours', row: { id: 'b', name: 'N 1', watch: [] } } as const;
  exportLog([makeRow(1)], EQUIPMENT, new Map([['lane-wheat', { now: jpeg(7) }]]), [row]);
  const lines = (await text(made[0]!)).trim().split('\n');
  expect(lines.map((line) => JSON.parse(line) as unknown)).toEqual([
    { kitchenFile: 3, equipment: EQUIPMENT, circle: 1 },
    { picture: 'lane-wheat', jpeg: '/9j/Bw==' },
    row,
    makeRow(1),
  ]);
});

it('lets the file go only when the download has had its time', () => {
  exportLog([makeRow(1)], EQUIPMENT, new Map(), [], 'harbour-lane.jsonl');
  expect(clicked[0]?.download).toBe('harbour-lane.jsonl');
  vi.advanceTimersByTime(59_999);
  expect(revoked).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(revoked).toHaveBeenCalledWith('blob:loafward/1');
});
