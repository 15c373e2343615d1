import { connect } from 'node:net';
import { expect, onTestFinished, test } from 'vitest';
import { serve } from '../../src/serve/serve.ts';
import { folder } from './folder.ts';

/** Whether something answers there. */
const answers = (host: string, port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = connect({ host, port, timeout: 2_000 });
    const over = (did: boolean) => () => {
      socket.destroy();
      resolve(did);
    };
    socket.once('connect', over(true)).once('error', over(false)).once('timeout', over(false));
  });

/** Another address of the same machine: whoever listens to the network hears it too. */
const OTHER = '127.0.0.2';

async function port(host?: string): Promise<number> {
  const dir = await folder({ 'index.html': '<!doctype html>' });
  const served = await serve({ dir, ...(host === undefined ? {} : { host }) });
  onTestFinished(() => served.close());
  return served.port;
}

test('nobody but this computer reaches the server that was not asked onto the network', async () => {
  const own = await port();
  expect(await answers('127.0.0.1', own)).toBe(true);
  expect(await answers(OTHER, own)).toBe(false);
});

test('one that was asked is reached', async () => {
  const open = await port('0.0.0.0');
  expect(await answers('127.0.0.1', open)).toBe(true);
});
