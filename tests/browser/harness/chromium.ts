import { chromium, type Browser } from 'playwright-core';
import { findBrowser } from '../../../src/serve/prepare/find-browser.mjs';

/** Quiet, and unable to reach anything but this machine. */
export const FLAGS: readonly string[] = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1',
];

/** The Chromium to test with. Throws a sentence where there is none. */
export async function chromiumPath(): Promise<string> {
  const path = await findBrowser();
  if (path === null)
    throw new Error('There is no Chromium to test with: run npm test, which gets one.');
  return path;
}

let shared: Promise<Browser> | null = null;

async function launch(): Promise<Browser> {
  const browser = await chromium.launch({ executablePath: await chromiumPath(), args: [...FLAGS] });
  browser.on('disconnected', () => (shared = null));
  return browser;
}

/** One Chromium for all test files, started when first needed; it ends with the process that asked. */
export function sharedBrowser(): Promise<Browser> {
  shared ??= launch();
  return shared;
}
