import { beforeEach, expect, it } from 'vitest';
import { makeEngines } from '../../../src/adapters/ear/engines.ts';
import { keptFiles } from '../../../src/adapters/ear/kept-files.ts';
import type { Nets } from '../../../src/adapters/ear/learned-engine.ts';

let onDisk: Map<string, string>;
let asked: string[];
let online: boolean;
let full: boolean;

const AT = 'https://here';
const cache = {
  match: async (path: string) => {
    const text = onDisk.get(AT + path);
    return text === undefined ? undefined : new Response(text);
  },
  async put(path: string, answer: Response) {
    if (full) throw new DOMException('', 'QuotaExceededError');
    onDisk.set(AT + path, await answer.text());
  },
  keys: async () => [...onDisk.keys()].map((url) => ({ url })),
  delete: async ({ url }: { url: string }) => onDisk.delete(url),
};
const parts = {
  async fetch(path: string) {
    asked.push(path);
    if (!online) throw new TypeError('no network');
    return new Response(path === '/none' ? '' : `the file ${path}`, {
      status: path === '/none' ? 404 : 200,
    });
  },
  caches: { open: async () => cache as never },
};
const textsOf = async (...paths: string[]) =>
  (await keptFiles(paths, parts)).map((file) => new TextDecoder().decode(file));

beforeEach(() => {
  [onDisk, asked, online, full] = [new Map(), [], true, false];
});

it('fetches what is not here, once: after that no network is asked', async () => {
  expect(await textsOf('/one', '/two')).toEqual(['the file /one', 'the file /two']);
  online = false;
  expect(await textsOf('/one', '/two')).toEqual(['the file /one', 'the file /two']);
  expect(asked).toEqual(['/one', '/two']);
});

it('drops what an older build kept', async () => {
  await textsOf('/one', '/old');
  await textsOf('/one', '/new');
  expect([...onDisk.keys()]).toEqual([`${AT}/one`, `${AT}/new`]);
});

it('has nothing where one cannot be had, or cannot be kept', async () => {
  await expect(textsOf('/one', '/none')).rejects.toThrow('/none: 404');
  online = false;
  await expect(textsOf('/two')).rejects.toThrow('no network');
  online = true;
  full = true;
  await expect(textsOf('/two')).rejects.toThrow();
});

it('opens the nets once, when they are wanted, and again after they could not be had', async () => {
  let opened = 0;
  const nets: Nets = { mel: () => Promise.reject(), embed: () => Promise.reject() };
  const engine = makeEngines(() => {
    opened += 1;
    return opened === 1 ? Promise.reject(new Error('no network')) : Promise.resolve(nets);
  });
  expect(await engine('plain')).not.toBeNull();
  expect(opened).toBe(0);
  expect(await engine('learned')).toBeNull();
  expect(await engine('learned')).not.toBeNull();
  expect(await engine('learned')).toBe(await engine('learned'));
  expect(opened).toBe(2);
});
