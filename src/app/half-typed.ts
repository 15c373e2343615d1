import type { Settings } from '../../machines/ports.ts';
import { MINUTE, type Instant } from '../core/units.ts';
import type { Half } from '../parts/half.ts';

const NAME = 'halfTyped';

/** Older than this a half-typed number is another reading's. Judgement. */
const STANDS = 30 * MINUTE;
/** Questions left half answered at once; the oldest goes first. Judgement. */
const MOST = 8;

interface Begun {
  readonly question: string;
  readonly text: string;
  readonly at: Instant;
}

const isBegun = (value: unknown): value is Begun => {
  const { question, text, at } = (value ?? {}) as Readonly<Record<string, unknown>>;
  const isText = typeof text === 'string' && /^[\d.]{1,6}$/.test(text);
  return isText && typeof question === 'string' && Number.isFinite(at);
};

export type HalfParts = Parameters<typeof makeHalfTyped>;

/**
 * What was keyed and not yet taken, by the question it answers: kept on this tablet across a reload,
 * in no fact. What cannot be read of it counts as nothing typed.
 *
 * @param keeps false in a rehearsal and in a page that only shows the kitchen
 */
export function makeHalfTyped(
  settings: Settings,
  now: () => Instant,
  keeps: boolean,
): (question: string) => Half {
  let all: readonly Begun[] = [];
  const fresh = (): readonly Begun[] =>
    all.filter(({ at }) => Math.abs(now() - at) <= STANDS).slice(-MOST);
  if (keeps) {
    void settings.get(NAME).then(
      (kept) => {
        all = [...(Array.isArray(kept) ? kept.filter(isBegun) : []), ...all];
      },
      () => undefined,
    );
  }
  return (question) => ({
    read: () => fresh().findLast((one) => one.question === question)?.text ?? '',
    keep(text) {
      const others = fresh().filter((one) => one.question !== question);
      if (text === '' && others.length === all.length) return;
      all = text === '' ? others : [...others, { question, text, at: now() }];
      if (keeps) void settings.set(NAME, all).catch(() => undefined);
    },
  });
}
