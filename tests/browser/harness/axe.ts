import axeCore from 'axe-core';
import type { Page } from 'playwright-core';

/** One broken rule and the elements that break it. */
export interface Violation {
  readonly rule: string;
  readonly impact: string;
  readonly help: string;
  readonly elements: readonly string[];
}

/**
 * Runs axe on the page as it stands. It runs in a world of its own beside the page's scripts: the
 * content policy need not let it in, and a stopped clock does not stop it.
 */
export async function axe(page: Page): Promise<Violation[]> {
  const session = await page.context().newCDPSession(page);
  try {
    const { frameTree } = await session.send('Page.getFrameTree');
    const { executionContextId: contextId } = await session.send('Page.createIsolatedWorld', {
      frameId: frameTree.frame.id,
      worldName: 'axe',
    });
    const run = async (expression: string): Promise<unknown> => {
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
    const found = (await run(
      `axe.run(document).then(({ violations, passes }) => ({ violations, passed: passes.length }))`,
    )) as { violations: axeCore.Result[]; passed: number };
    if (found.passed === 0) throw new Error('axe checked nothing on this page.');
    return found.violations.map(({ id, impact, help, nodes }) => ({
      rule: id,
      impact: impact ?? 'unknown',
      help,
      elements: nodes.map(({ target }) => target.join(' ')),
    }));
  } finally {
    await session.detach();
  }
}
