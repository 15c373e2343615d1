import { spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { chromiumPath, FLAGS } from './chromium.ts';
import { closeLater } from './open.ts';

/** One tab of a Chromium with another tab beside it. */
export interface Tab {
  /** The value of an expression, awaited. It is no gesture: what needs a tap still needs one. */
  evaluate(expression: string): Promise<unknown>;
  /** A real tap in the middle of what the selector finds. */
  tap(selector: string): Promise<void>;
  /** Brings the other tab to the front, or this one: `document.hidden` follows. */
  hide(): Promise<void>;
  show(): Promise<void>;
  /** Stops everything in a hidden tab, as a sleeping tablet does; `show` lets it go on. */
  freeze(): Promise<void>;
  /** Anything else the browser can be told, by its protocol's own name. */
  tell(method: string, params?: object): Promise<unknown>;
  close(): Promise<void>;
}

/** ms. */
const ENDS_WITHIN = 15_000;

type Answer = { readonly id?: number; readonly result?: unknown; readonly error?: unknown };

/** The browser's own protocol over a pipe: one JSON text a message, ended by a NUL. */
function talk(to: Writable, from: Readable) {
  const waiting = new Map<number, (answer: Answer) => void>();
  let rest = '';
  let last = 0;
  from.setEncoding('utf8').on('data', (text: string) => {
    const messages = (rest + text).split('\0');
    rest = messages.pop() ?? '';
    for (const message of messages) {
      const answer = JSON.parse(message) as Answer;
      if (answer.id !== undefined) waiting.get(answer.id)?.(answer);
    }
  });
  return async (method: string, params: object = {}, sessionId?: string): Promise<unknown> => {
    const id = (last += 1);
    const { result, error } = await new Promise<Answer>((resolve) => {
      waiting.set(id, resolve);
      to.write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
    });
    waiting.delete(id);
    if (error) throw new Error(`${method}: ${JSON.stringify(error)}`);
    return result;
  };
}

/**
 * Opens `url` in a Chromium of its own, without playwright: playwright keeps every page visible and
 * every script a gesture, so neither a hidden page nor locked sound can be seen through it. `script`
 * runs before anything of the page; the browser is told `env` beside the surroundings of the test, and
 * `flags` beside its own. Closed by itself when the test file is over.
 */
export async function openTab(
  url: string,
  script = '',
  {
    env = {},
    flags = [],
  }: { readonly env?: Readonly<Record<string, string>>; readonly flags?: readonly string[] } = {},
): Promise<Tab> {
  const profile = await mkdtemp(join(tmpdir(), 'loafward-tab-'));
  const own = ['--headless', '--remote-debugging-pipe', `--user-data-dir=${profile}`];
  const args = [...FLAGS, ...flags, ...own];
  const child = spawn(await chromiumPath(), [...args, 'about:blank'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
    env: { ...process.env, ...env },
  });
  const gone = new Promise((resolve) => child.once('exit', resolve));
  const send = talk(child.stdio[3] as Writable, child.stdio[4] as unknown as Readable);
  const open = async (to: string) => {
    const { targetId } = (await send('Target.createTarget', { url: to })) as { targetId: string };
    return targetId;
  };
  const other = await open('about:blank');
  const targetId = await open('about:blank');
  const { sessionId } = (await send('Target.attachToTarget', { targetId, flatten: true })) as {
    sessionId: string;
  };
  const ask = (method: string, params?: object) => send(method, params, sessionId);

  const evaluate = async (expression: string) => {
    const { result, exceptionDetails } = (await ask('Runtime.evaluate', {
      expression,
      awaitPromise: true,
      returnByValue: true,
    })) as { result: { value?: unknown }; exceptionDetails?: { text: string } };
    if (exceptionDetails) throw new Error(`${expression}: ${exceptionDetails.text}`);
    return result.value;
  };

  let isOpen = true;
  const close = async () => {
    if (!isOpen) return;
    isOpen = false;
    // One that does not end when it is told to, as happens on a busy machine, is ended.
    const late = setTimeout(() => child.kill('SIGKILL'), ENDS_WITHIN);
    await Promise.race([send('Browser.close'), gone]);
    await gone;
    clearTimeout(late);
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  closeLater(close);

  await ask('Page.enable');
  if (script !== '') await ask('Page.addScriptToEvaluateOnNewDocument', { source: script });
  await ask('Page.navigate', { url });

  return {
    evaluate,
    async tap(selector) {
      const found = JSON.stringify(selector);
      const box = `(({ x, y, width, height }) => ({ x: x + width / 2, y: y + height / 2 }))`;
      const point = await evaluate(
        `${box}(document.querySelector(${found}).getBoundingClientRect())`,
      );
      const touchPoints = [point];
      await ask('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
      await ask('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    },
    hide: async () => void (await send('Target.activateTarget', { targetId: other })),
    show: async () => {
      await ask('Page.setWebLifecycleState', { state: 'active' });
      await send('Target.activateTarget', { targetId });
    },
    freeze: async () => void (await ask('Page.setWebLifecycleState', { state: 'frozen' })),
    tell: ask,
    close,
  };
}
