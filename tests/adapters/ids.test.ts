import { afterEach, describe, expect, it, vi } from 'vitest';
import { readDevice } from '../../src/adapters/device.ts';
import { makeIds, randomId } from '../../src/adapters/ids.ts';
import { makeCountedIds } from '../fakes/counted-ids.ts';
import { makeMemorySettings } from '../fakes/memory-settings.ts';

const UUID4 = /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

afterEach(() => vi.unstubAllGlobals());

/** Plain http: chance is there, randomUUID is not. */
const onPlainHttp = (fill: (bytes: Uint8Array) => Uint8Array) =>
  vi.stubGlobal('crypto', { getRandomValues: fill });

describe('ids', () => {
  it('are new each time and begin with the device', () => {
    const ids = makeIds('0f3a77c2-1111-4111-8111-111111111111');
    const many = Array.from({ length: 2000 }, () => ids.next());
    expect(new Set(many).size).toBe(2000);
    expect(many.every((id) => id.startsWith('0f3a77c2-') && UUID4.test(id.slice(9)))).toBe(true);
    expect(ids.device).toBe('0f3a77c2-1111-4111-8111-111111111111');
  });

  it('are UUIDs of version 4 on plain http too', () => {
    const real = crypto.getRandomValues.bind(crypto);
    onPlainHttp((bytes) => real(bytes as Uint8Array<ArrayBuffer>));
    const many = Array.from({ length: 500 }, randomId);
    expect(new Set(many).size).toBe(500);
    expect(many.filter((id) => !UUID4.test(id))).toEqual([]);
  });

  it('put the bytes in the order of the standard', () => {
    onPlainHttp((bytes) => bytes.map((_, i) => (bytes[i] = i * 17)));
    expect(randomId()).toBe('00112233-4455-4677-8899-aabbccddeeff');
  });

  it('have a fake that counts', () => {
    const ids = makeCountedIds();
    expect([ids.next(), ids.next(), ids.device]).toEqual(['counter-1', 'counter-2', 'counter']);
  });
});

describe('the device', () => {
  it('is named once and then remembered', async () => {
    const settings = makeMemorySettings();
    const name = await readDevice(settings);
    expect(name).toMatch(UUID4);
    expect(await readDevice(settings)).toBe(name);
    expect(settings.values.get('device')).toBe(name);
  });

  it.each([[7], [''], [null]])('is named anew where %j is kept', async (kept) => {
    const settings = makeMemorySettings({ device: kept });
    const name = await readDevice(settings);
    expect(name).toMatch(UUID4);
    expect(settings.values.get('device')).toBe(name);
  });

  it('has a passing name while the settings cannot be read, and the old one after', async () => {
    const settings = makeMemorySettings({ device: 'counter' });
    settings.fail('closed');
    const first = await readDevice(settings);
    expect(first).toMatch(UUID4);
    expect(await readDevice(settings)).not.toBe(first);
    settings.fail(null);
    expect(await readDevice(settings)).toBe('counter');
  });

  it('has a name even when it cannot be kept', async () => {
    const settings = makeMemorySettings();
    settings.set = () => Promise.reject(new Error('full'));
    expect(await readDevice(settings)).toMatch(UUID4);
  });
});
