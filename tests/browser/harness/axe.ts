import axeCore from 'axe-core';
import type { Page } from 'playwright-core';

/** One broken rule and the elements that break it. */
export interface Violation {
  readonly rule: string;
  readonly impact: string;
  readonly help: string;
  readonly elements: readonly string[];
}

type Run = (expression: string) => Promise<unknown>;

/** What runs in each page's own world of axe: it is read in once a page, not once a look. */
const worlds = new WeakMap<Page, Run>();

async function openWorld(page: Page): Promise<Run> {
  const session = await page.context().newCDPSession(page);
  const { frameTree } = await session.send('Page.getFrameTree');
  const { executionContextId: contextId } = await session.send('Page.createIsolatedWorld', {
    frameId: frameTree.frame.id,
    worldName: 'axe',
  });
  const run: Run = async (expression) => {
    const { result, exceptionDetails } = await session.send('Runtime.evaluate', {
      expression,
      contextId,
      awaitPromise: true,
      returnByValue: true,
    });
    if (exceptionDetails)
      throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
    return result.value;
  };
  await run(`${axeCore.source}; true`);
  return run;
}

/** A world whose page was loaded anew is gone: then there is another. */
async function worldOf(page: Page): Promise<Run> {
  const old = worlds.get(page);
  const is = await old?.('typeof axe').catch(() => null);
  if (old && is === 'object') return old;
  const run = await openWorld(page);
  worlds.set(page, run);
  return run;
}

/**
 * Runs axe on the page as it stands. It runs in a world of its own beside the page's scripts: the
 * content policy need not let it in, and a stopped clock does not stop it.
 */
export async function axe(page: Page): Promise<Violation[]> {
  const run = await worldOf(page);
  const found = (await run(
    `axe.run(document, { resultTypes: ['violations'] })` +
      `.then(({ violations, passes }) => ({ violations, passed: passes.length }))`,
  )) as { violations: axeCore.Result[]; passed: number };
  if (found.passed === 0) throw new Error('axe checked nothing on this page.');
  return found.violations.map(({ id, impact, help, nodes }) => ({
    rule: id,
    impact: impact ?? 'unknown',
    help,
    elements: nodes.map(({ target }) => target.join(' ')),
  }));
}
