import type { EarPhrase } from './phrases.ts';

/**
 * What the ear does, as it is shown. `off`: not wanted here, or it knows nobody. `shut`: a press or a prompt
 * opens it. `speaks`: it hears somebody. `tiles`: it did not understand twice; by hand, until the next act.
 * `denied`, `none`, `gone`, `failed`: there is no microphone for it, and why.
 */
export interface EarShown {
  readonly state:
    'off' | 'shut' | 'open' | 'speaks' | 'tiles' | 'denied' | 'none' | 'gone' | 'failed';
  /** What may be said now, the likeliest first. */
  readonly active: readonly EarPhrase[];
}

export const NO_EAR: EarShown = { state: 'off', active: [] };
