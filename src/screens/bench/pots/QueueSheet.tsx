import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { mayTurn, type TurnAct } from '../../../../machines/kitchen/may-turn.ts';
import type { LoadPlan, Turn as Going } from '../../../core/oven/lanes.ts';
import { potsPage, queuePage } from '../../../core/speech/words/pots-page.ts';
import { fill } from '../../../core/speech/fill.ts';
import type { Instant } from '../../../core/units.ts';
import { Control } from '../../../parts/Control.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import type { House } from '../../house.ts';
import { potQueue } from '../oven-plan.ts';
import { loafName } from './loaf-name.ts';

/** The loaves that wait, in their order and with what decides it; a press changes one's turn. */
export function QueueSheet(props: {
  readonly house: House;
  readonly plan: LoadPlan;
  readonly onBack: () => void;
}): JSX.Element {
  const [asked, setAsked] = createSignal<string | null>(null);
  const kitchen = () => props.house.kitchen();
  const hour = (at: Instant): string => props.house.hour(at);
  const queue = createMemo(() => potQueue(kitchen()));
  const going = (loaf: string): Going | undefined =>
    props.plan.lanes.flatMap(({ turns }) => turns).find((turn) => turn.loaf === loaf);
  const name = (loaf: string): string => loafName(kitchen(), loaf, hour);
  const value = (loaf: string): string => {
    const turn = kitchen().oven.context.turns?.[loaf];
    const at = going(loaf);
    const time = at ? hour(at.loadAt) : '–';
    if (turn === 'later') return fill(queuePage.later, { time });
    if (turn === 'first' || turn === 'flat') return fill(queuePage.first, { time });
    return fill(queuePage.at, { time });
  };
  const reason = (loaf: string): string | null => {
    const why = going(loaf)?.reason;
    return why ? queuePage.reason[why] : null;
  };
  const turn = (act: TurnAct): void => {
    const item = asked();
    setAsked(null);
    if (item !== null) void props.house.take({ kind: 'press', who: 'oven', act, item });
  };
  const off = (act: TurnAct, loaf: string): boolean =>
    !props.house.holds || !mayTurn(kitchen(), act, loaf);
  const still = () => queue().find((loaf) => loaf === asked());
  return (
    <Show
      when={still()}
      fallback={
        <Sheet title={queuePage.title}>
          <p>{queue().length > 0 ? queuePage.ask : queuePage.none}</p>
          <div class="pots-queue">
            <Control label={potsPage.backToPots} onPress={() => props.onBack()} />
            <For each={queue()}>
              {(loaf) => (
                <Control label={name(loaf)} value={value(loaf)} onPress={() => setAsked(loaf)} />
              )}
            </For>
          </div>
        </Sheet>
      }
    >
      {(loaf) => (
        <Sheet title={`${name(loaf())}: ${value(loaf())}`}>
          <Show when={reason(loaf())}>{(why) => <p>{why()}</p>}</Show>
          <Show
            when={(['loafFirst', 'loafLater'] as const).some(
              (act) => !mayTurn(kitchen(), act, loaf()),
            )}
          >
            <p>{queuePage.looked}</p>
          </Show>
          <div class="pots-queue">
            <Control
              label={queuePage.bakeFirst}
              disabled={off('loafFirst', loaf())}
              onPress={() => turn('loafFirst')}
            />
            <Control
              label={queuePage.leave}
              disabled={off('loafLater', loaf())}
              onPress={() => turn('loafLater')}
            />
            <Control label={queuePage.stays} onPress={() => setAsked(null)} />
          </div>
        </Sheet>
      )}
    </Show>
  );
}
