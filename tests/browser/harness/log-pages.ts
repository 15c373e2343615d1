import { to, type PageStep } from './page-step.ts';

/** The Log's list, and what is found in it. */
export const LOG_PAGES: readonly PageStep[] = [to('log, nothing baked yet', 'Log')];
