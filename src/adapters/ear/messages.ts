import type { EarAsk, EarTold } from '../../../machines/ear-port.ts';
import type { EarEngine, Saying } from '../../core/ear/person.ts';

/** What the ear's thread hears: blocks of samples come out of `port`, so many samples a second. */
interface Sound {
  readonly port: MessagePort;
  readonly rate: number;
}

/** What the page asks of the ear's thread. Answers carry the `turn` of their question. */
export type ToThread =
  | { readonly kind: 'fetch'; readonly turn: number; readonly engine: EarEngine }
  | ({ readonly kind: 'listen'; readonly turn: number; readonly ask: EarAsk } & Sound)
  | ({ readonly kind: 'take'; readonly turn: number; readonly engine: EarEngine } & Sound)
  /** What was said till now is taken. */
  | { readonly kind: 'enough'; readonly turn: number }
  | { readonly kind: 'shut'; readonly turn: number };

/** What it answers: small things alone, and never sound. */
export type FromThread = { readonly turn: number } & (
  | { readonly kind: 'fetched'; readonly here: boolean }
  | { readonly kind: 'told'; readonly told: Exclude<EarTold, { readonly kind: 'over' }> }
  /** Null: nobody spoke. */
  | { readonly kind: 'taken'; readonly sayings: readonly Saying[] | null }
  | { readonly kind: 'failed'; readonly message: string }
);
