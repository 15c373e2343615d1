import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';

/** What must stay empty in every test of the app. */
export interface Faults {
  /** console.error */
  readonly console: string[];
  /** Errors nobody caught. */
  readonly page: string[];
  /** What the content policy blocked. */
  readonly policy: string[];
  /** Requests that left the app's own server. */
  readonly offOrigin: string[];
}

/** Watches every page of a context, present and to come, from its first request on. */
export async function watchFaults(context: BrowserContext, origin: string): Promise<Faults> {
  const faults: Faults = { console: [], page: [], policy: [], offOrigin: [] };
  const check = (url: string) => {
    if (/^(data|blob|about):/.test(url)) return;
    if (new URL(url).host !== new URL(origin).host) faults.offOrigin.push(url);
  };
  const watchPage = (page: Page) => {
    page.on('console', (said) => {
      if (said.type() === 'error') faults.console.push(`${said.text()} (${said.location().url})`);
    });
    page.on('pageerror', (error) => faults.page.push(String(error.stack ?? error)));
    page.on('websocket', (socket) => check(socket.url()));
  };
  context.pages().forEach(watchPage);
  context.on('page', watchPage);
  // Requests of the service worker come here too.
  context.on('request', (request) => check(request.url()));
  await context.exposeBinding('reportPolicy', (_, blocked: string) => {
    faults.policy.push(blocked);
  });
  await context.addInitScript(() => {
    const report = (globalThis as unknown as { reportPolicy: (blocked: string) => void })
      .reportPolicy;
    document.addEventListener('securitypolicyviolation', (event) =>
      report(`${event.effectiveDirective} blocked ${event.blockedURI} ${event.sourceFile ?? ''}`),
    );
  });
  return faults;
}

/** Holds that nothing went wrong, and shows all that did. */
export function expectNoFaults(faults: Faults): void {
  expect(faults).toEqual({ console: [], page: [], policy: [], offOrigin: [] });
}
