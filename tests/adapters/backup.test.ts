// @vitest-environment jsdom
import { webcrypto } from 'node:crypto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { exportFile } from '../../src/adapters/backup.ts';
import { fromBase64, toBase64 } from '../../src/adapters/base64.ts';
import { longSum, sumOf } from '../../src/adapters/sum.ts';

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

it('downloads a text as it is', async () => {
  exportFile('two\nlines “and” a quote"\n');
  expect(clicked).toEqual([{ href: 'blob:loafward/1', download: 'loafward-log.jsonl' }]);
  expect(await text(made[0]!)).toBe('two\nlines “and” a quote"\n');
});

it('lets the file go only when the download has had its time', () => {
  exportFile('', 'harbour-lane.jsonl');
  expect(clicked[0]?.download).toBe('harbour-lane.jsonl');
  vi.advanceTimersByTime(59_999);
  expect(revoked).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(revoked).toHaveBeenCalledWith('blob:loafward/1');
});

it('sums as the standard does, by the browser’s own or without it', async () => {
  // FIPS 180-4 by its published example "abc" (NIST, SHA-256 example values).
  expect(sumOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  // Of letters beyond ASCII it is their UTF-8 that is summed.
  const digest = vi.fn((_: AlgorithmIdentifier, of: BufferSource) =>
    webcrypto.subtle.digest('SHA-256', of),
  );
  for (const text of ['', 'abc', 'ü “ear” 🍞'.repeat(99)]) {
    expect(await longSum(text, { digest })).toBe(sumOf(text));
    expect(await longSum(text, null)).toBe(sumOf(text));
  }
  expect(digest).toHaveBeenCalledTimes(3);
});

it('has any bytes as letters and back', () => {
  // RFC 4648 §10.
  expect(toBase64(new TextEncoder().encode('foobar'))).toBe('Zm9vYmFy');
  const bytes = Uint8Array.from({ length: 70_001 }, (_, i) => (i * 7) % 256);
  expect([...fromBase64(toBase64(bytes))]).toEqual([...bytes]);
});
