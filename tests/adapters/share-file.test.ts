// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { shareFile } from '../../src/adapters/share-file.ts';

const FILE = { name: 'day.ics', type: 'text/calendar', text: 'BEGIN:VCALENDAR' };
let saved: { name: string; file: File }[] = [];

beforeEach(() => {
  saved = [];
  let last: File | null = null;
  URL.createObjectURL = (file) => {
    last = file as File;
    return 'blob:day';
  };
  URL.revokeObjectURL = () => undefined;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
    this: HTMLAnchorElement,
  ) {
    saved.push({ name: this.download, file: last! });
  });
});
afterEach(() => vi.restoreAllMocks());

test('a device that shares files is asked to, and nothing is downloaded', async () => {
  const given: ShareData[] = [];
  const hands = {
    canShare: () => true,
    share: (data?: ShareData) => Promise.resolve(void given.push(data!)),
  };
  expect(await shareFile(FILE, hands)).toBe('shared');
  expect(given[0]!.files![0]).toMatchObject({ name: 'day.ics', type: 'text/calendar' });
  expect(saved).toEqual([]);
});

test('where nothing shares files it is a download with all that is in it', async () => {
  for (const hands of [{}, { canShare: () => false, share: () => Promise.reject(new Error()) }]) {
    expect(await shareFile(FILE, hands)).toBe('saved');
    const { name, file } = saved.pop()!;
    expect([name, file.type, file.size]).toEqual(['day.ics', 'text/calendar', FILE.text.length]);
  }
});

test('a sheet that was closed saves nothing, one that failed gives the download', async () => {
  const failing = (error: Error) => ({ canShare: () => true, share: () => Promise.reject(error) });
  expect(await shareFile(FILE, failing(new DOMException('closed', 'AbortError')))).toBe('left');
  expect(saved).toEqual([]);
  const refused = failing(new DOMException('no tap', 'NotAllowedError'));
  expect(await shareFile(FILE, refused)).toBe('saved');
  expect(saved).toHaveLength(1);
});
