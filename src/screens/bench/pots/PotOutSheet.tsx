import { createSignal, For, Show, type JSX } from 'solid-js';
import { pots } from '../../../core/speech/words/names.ts';
import { potOutPage, potsPage } from '../../../core/speech/words/pots-page.ts';
import type { PotName } from '../../../core/kitchen/pots.ts';
import { potOf } from '../../../core/records/lane.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import type { House } from '../../house.ts';
import { potTitle } from '../../pot-of.ts';

/** A pot that takes no more loaves: which, and once more whether. The last one stays, and says why. */
export function PotOutSheet(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [asked, setAsked] = createSignal<string | null>(null);
  const lanes = (): readonly string[] => props.house.kitchen().oven.context.lanes ?? [];
  const title = (lane: string): string => potTitle(lane) ?? potsPage.one;
  const said = (lane: string): string => pots[potOf(lane) as PotName] ?? pots.pot;
  const drop = (): void => {
    const item = asked();
    setAsked(null);
    props.onBack();
    if (item !== null) void props.house.take({ kind: 'press', who: 'oven', act: 'potOut', item });
  };
  const still = () => lanes().find((lane) => lane === asked());
  const back = () => <Control label={potsPage.backToPots} onPress={() => props.onBack()} />;
  return (
    <Show
      when={still()}
      fallback={
        <Sheet title={potOutPage.title}>
          <p>{lanes().length > 1 ? potOutPage.said : potOutPage.last}</p>
          <div class="pots-queue">
            {back()}
            <For each={lanes().length > 1 ? lanes() : []}>
              {(lane) => (
                <Control
                  label={fill(potOutPage.one, { pot: title(lane) })}
                  disabled={!props.house.holds}
                  onPress={() => setAsked(lane)}
                />
              )}
            </For>
          </div>
        </Sheet>
      }
    >
      {(lane) => (
        <Sheet title={fill(potOutPage.ask, { pot: said(lane()) })}>
          <p>{potOutPage.said}</p>
          <div class="pots-queue">
            <Control label={potOutPage.no} onPress={() => setAsked(null)} />
            <Control label={potOutPage.yes} onPress={drop} />
          </div>
        </Sheet>
      )}
    </Show>
  );
}
