import { describe, expect, test } from 'vitest';
import { hasVoices } from '../../src/serve/prepare/find-voices.mjs';
import { getVoices } from '../../src/serve/prepare/get-voices.mjs';
import { folder } from './folder.ts';
import { machine } from './machine.ts';

describe('the voices the ear is tested with', () => {
  const voicesOn = (canApt: boolean, works: RegExp | null) => {
    const { there, world, ...rest } = machine(canApt, works);
    return { ...rest, world: { ...world, has: there } };
  };

  test('are there where both programs are on the PATH', async () => {
    const one = await folder({ 'espeak-ng': '' });
    const two = await folder({ flite: '' });
    expect(hasVoices({ PATH: `${one}:${two}` })).toBe(true);
    expect(hasVoices({ PATH: one })).toBe(false);
    expect(hasVoices({})).toBe(false);
  });

  test('root on Debian gets them by apt-get, once', () => {
    const { world, ran } = voicesOn(true, /^apt-get .* espeak-ng flite$/);
    expect(getVoices(world)).toBe(true);
    expect(getVoices(world)).toBe(true);
    expect(ran).toEqual([
      'apt-get update',
      'apt-get -o DPkg::Lock::Timeout=300 install -y --no-install-recommends espeak-ng flite',
    ]);
  });

  test.each([true, false])('where they cannot be had that is said: apt-get %s', (canApt) => {
    const { world, ran, said } = voicesOn(canApt, null);
    expect(getVoices(world)).toBe(false);
    expect(ran).toHaveLength(canApt ? 2 : 0);
    expect(said.at(-1)).toContain('is not tested in this run, and the count says so');
  });
});
