import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, it } from 'vitest';
import { firstLoad } from './harness/first-load.ts';

it('first asks for at most 45 kB of script and style, packed', () => {
  const { files, bytes } = firstLoad(inject('site'));
  expect(files.length).toBeGreaterThan(1);
  expect(bytes).toBeLessThanOrEqual(45_000);
});

it('does not first ask for the sound library', () => {
  const site = inject('site');
  for (const { file } of firstLoad(site).files) {
    expect(readFileSync(join(site, file), 'utf8'), file).not.toContain('HowlerGlobal');
  }
});
