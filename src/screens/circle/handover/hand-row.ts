import { tellLine, type MessageRead } from '../../../core/circle/message.ts';
import type { PickUp } from '../../../core/circle/pick-up.ts';
import type { Warm } from '../../../core/circle/still-warm.ts';
import { watchedIn } from '../../../core/circle/watched.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import { handOver as words } from '../../../core/speech/words/hand-over.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showAllergens } from '../../../core/speech/show-allergen.ts';
import type { Instant } from '../../../core/units.ts';

/** One order as a row that is read: who, when, what, and what to look out for. */
export interface HandRow {
  readonly id: string;
  readonly hour: string;
  readonly name: string;
  readonly lines: readonly string[];
  /** What they must not eat, what of it is in their bread, and what nobody has answered for. */
  readonly cautions: readonly string[];
  /** Their bread is warm: its bag stays open; null: it is not, or nobody knows, or it has gone. */
  readonly warm: string | null;
  readonly toPay: string | null;
  readonly paid: boolean;
  /** 'Handed over 16:05'; null: it is still here. */
  readonly handed: string | null;
}

/** What else a row is made of. */
export interface RowRead extends MessageRead {
  formula(id: string): Formula | null;
  /** Breads that are warm now; none where the list is of another day. */
  readonly warm: Readonly<Record<string, Warm>>;
  clock(at: Instant): string;
}

function cautionsOf({ order, watch }: PickUp, read: RowRead): readonly string[] {
  if (watch.length === 0) return [];
  const breads = [...new Set(order.lines.map(({ bread }) => bread))].map((id) => {
    const formula = read.formula(id);
    return { bread: read.bread(id), met: formula && watchedIn(watch, formula) };
  });
  const isOpen = breads.some(
    ({ met }) => met === null || met.open.length + met.unanswered.length > 0,
  );
  return [
    fill(words.watch, { allergens: showAllergens(watch) }),
    ...breads.flatMap(({ bread, met }) =>
      met === null || met.named.length === 0
        ? []
        : [fill(words.holds, { bread, allergens: showAllergens(met.named) })],
    ),
    ...(isOpen ? [words.unread] : []),
  ];
}

/** That a bag stays open, and until when where that is known of all that is warm in it. */
function warmOf({ order }: PickUp, read: RowRead): string | null {
  const of = order.lines.flatMap(({ bread }) => read.warm[bread] ?? []);
  if (order.handed !== null || of.length === 0) return null;
  const ends = of.map(({ until }) => until);
  const isKnown = ends.every((at): at is Instant => at !== null);
  return isKnown
    ? `${words.warm} ${fill(words.coolAt, { time: read.clock(Math.max(...ends)) })}`
    : words.warm;
}

/** A pick-up in words. */
export function handRow(one: PickUp, read: RowRead): HandRow {
  const { order, name } = one;
  const price = order.paid ? null : read.price(order.lines);
  return {
    id: order.id,
    hour: order.at === null ? words.any : read.hour(order.at),
    name: name ?? words.nobody,
    lines: order.lines.filter(({ count }) => count > 0).map((line) => tellLine(line, read)),
    cautions: cautionsOf(one, read),
    warm: warmOf(one, read),
    toPay: price === null ? null : fill(words.toPay, { value: price }),
    paid: order.paid,
    handed: order.handed === null ? null : fill(words.handed, { time: read.clock(order.handed) }),
  };
}
