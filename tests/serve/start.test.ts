import { X509Certificate } from 'node:crypto';
import { describe, expect, onTestFinished, test } from 'vitest';
import { AUTHORITY_PATH, qr } from '../../src/serve/lan/words.ts';
import { lanNames } from '../../src/serve/lan/names.ts';
import { serve } from '../../src/serve/serve.ts';
import { start } from '../../src/serve/start.ts';
import { ask } from './ask.ts';
import { folder } from './folder.ts';

async function run(args: string[], env: NodeJS.ProcessEnv) {
  const printed: string[] = [];
  const dir = await folder({ 'index.html': 'app' });
  const print = (words: string) => void printed.push(words);
  const served = await start({ args, env, dir, now: Date.now(), print });
  onTestFinished(() => served.close());
  return { ...served, printed: printed.join('\n') };
}

describe('starting', () => {
  test('prints the address it really has', async () => {
    const { url, printed } = await run([], { PORT: '0' });
    expect(printed).toContain(url);
    expect(printed).toContain('npm start -- --lan');
    expect((await ask(url, '/')).body.toString()).toBe('app');
  });

  test('on a taken port, says that the next one has another log', async () => {
    const first = await serve({ dir: await folder() });
    onTestFinished(() => first.close());
    const { port, printed } = await run([], { PORT: String(first.port) });
    expect(port).not.toBe(first.port);
    expect(printed).toContain(`Port ${first.port} is taken, so this is port ${port}.`);
    expect(printed).toContain('a log of its own');
  });

  test.each([
    [['--wlan'], {}, "Unknown option '--wlan'"],
    [[], { PORT: 'oven' }, 'PORT must be a whole number from 0 to 65535, not "oven".'],
    [[], { PORT: '70000' }, 'PORT must be a whole number'],
  ])('%j %j is refused in a sentence', async (args, env, sentence) => {
    await expect(run(args, env)).rejects.toThrow(sentence);
  });

  test('without a build it says so', async () => {
    const dir = await folder();
    const call = { args: [], env: {}, dir, now: 0, print: () => undefined };
    await expect(start(call)).rejects.toThrow('There is no built app in');
  });
});

describe('starting for the network', () => {
  test('serves https on the printed address, with the authority to trust', async () => {
    const home = await folder();
    const address = lanNames().addresses[0];
    if (address === undefined) {
      // A machine without a network: then that is what it must say.
      await expect(run(['--lan'], { PORT: '0', LOAFWARD_HOME: home })).rejects.toThrow(
        'This computer has no address on a network.',
      );
      return;
    }
    const { url, port, printed } = await run(['--lan'], { PORT: '0', LOAFWARD_HOME: home });
    expect(url).toBe(`https://${address}:${port}`);
    expect(printed).toContain(qr(url));
    // The tablet's first visit: not trusting yet, it fetches the authority.
    const handed = await ask(url, AUTHORITY_PATH, { rejectUnauthorized: false });
    expect(handed.authorized).toBe(false);
    const authority = new X509Certificate(handed.body);
    expect(printed).toContain(authority.fingerprint256);
    const reply = await ask(url, '/', { ca: authority.toString() });
    expect(reply).toMatchObject({ status: 200, authorized: true });
    expect(reply.body.toString()).toBe('app');
  });

  test('a second start hands out the same authority', async () => {
    if (lanNames().addresses.length === 0) {
      expect(lanNames().ips).toEqual(['127.0.0.1', '::1']);
      return;
    }
    const env = { PORT: '0', LOAFWARD_HOME: await folder() };
    const bodies = [];
    for (const { url } of [await run(['--lan'], env), await run(['--lan'], env)])
      bodies.push((await ask(url, AUTHORITY_PATH, { rejectUnauthorized: false })).body);
    expect(bodies[0]).toEqual(bodies[1]);
  });
});
