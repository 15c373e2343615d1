import type { EarAsk, EarTold } from '../../../../machines/ear-port.ts';
import type { Stop } from '../../../../machines/ports.ts';
import {
  TRY_MORE,
  TRY_WITHIN,
  type Tried,
  type TryOutcome,
  type TryTold,
} from '../../../core/ear/try-round.ts';
import type { EarPhrase } from '../../../core/ear/phrases.ts';
import type { HouseEar } from '../../house-ear.ts';

/** How often somebody who speaks still is waited for. */
const MORE = 2;

/** Why a try ended before its last phrase; null: it did not, or it was stopped by hand. */
export type TryOver = Extract<EarTold, { readonly kind: 'over' }>['why'] | null;

/**
 * Asks for one phrase after another and listens; the microphone stays open as long as the same are listened for.
 * Ends by itself, or with what there is once it is stopped.
 *
 * @param round one phrase at least
 */
export function runTry(
  ear: Pick<HouseEar, 'listen'>,
  who: Omit<EarAsk, 'active'>,
  round: readonly Tried[],
  tell: {
    readonly asks: (n: number) => void;
    readonly speaks: (speaks: boolean) => void;
    readonly over: (told: TryTold, why: TryOver) => void;
  },
): Stop {
  const outcomes: TryOutcome[] = [];
  const rooms: number[] = [];
  let loud = 0;
  let n = 0;
  let speaks = false;
  let active: readonly EarPhrase[] = [];
  let shut: Stop = () => undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let isOver = false;

  const end = (why: TryOver): void => {
    if (isOver) return;
    isOver = true;
    clearTimeout(timer);
    shut();
    tell.over({ outcomes, rooms, loud }, why);
  };
  const hush = (next: boolean): void => {
    speaks = next;
    tell.speaks(next);
  };
  const answer = (outcome: TryOutcome): void => {
    outcomes.push(outcome);
    n += 1;
    if (n === round.length) end(null);
    else ask();
  };
  const wait = (ms: number, more: number): void => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      if (speaks && more > 0) wait(TRY_MORE, more - 1);
      else answer('missed');
    }, ms);
  };
  const listen = (): void => {
    shut();
    hush(false);
    const its = active;
    const hear = (told: EarTold): void => {
      // What was shut may still have something to say.
      if (isOver || its !== active) return;
      if (told.kind === 'open') wait(TRY_WITHIN, MORE);
      else if (told.kind === 'speaks') hush(told.speaks);
      else if (told.kind === 'room') rooms.push(told.db);
      else if (told.kind === 'over') end(told.why);
      else if (told.heard.phrase !== null)
        answer(told.heard.phrase === round[n]!.asked ? 'right' : 'wrong');
      // Talk was not meant for it.
      else if (told.heard.why !== 'long') {
        if (told.heard.why === 'loud') loud += 1;
        answer('missed');
      }
    };
    shut = ear.listen({ ...who, active }, hear);
  };
  const ask = (): void => {
    tell.asks(n);
    const next = round[n]!.active;
    if (next === active) return wait(TRY_WITHIN, MORE);
    clearTimeout(timer);
    active = next;
    listen();
  };
  ask();
  return () => end(null);
}
