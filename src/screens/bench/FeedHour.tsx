import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { feedFor, feedStands, ripeAt } from '../../core/day/feed-plan.ts';
import { atMix } from '../../core/day/mix-known.ts';
import type { WeighLine } from '../../core/formula/recipe.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { feed } from '../../core/speech/words/feed.ts';
import { readThrough } from '../../core/speech/words/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { tellLine } from '../../core/speech/tell-line.ts';
import { showHeat } from '../../core/speech/heats.ts';
import { showWeight } from '../../core/speech/weights.ts';
import { mixInput } from '../../../machines/kitchen/mixes.ts';
import { HOUR, MINUTE, type Instant } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import { focusOn } from '../focus.ts';
import type { House } from '../house.ts';
import { feedInput, showRatio } from './feed-view.ts';
import type { ReadingPage } from './readings/page.ts';
import './FeedHour.css';

/** Hours to mix at are chosen in steps of this, and up to so long from now. */
const STEP = 30 * MINUTE;
const MUCH = 3 * HOUR;
const MOST = 36 * HOUR;

const onStep = (at: Instant): Instant => Math.round(at / STEP) * STEP;

/** The hour the baker wants to mix at, how the formula's feed stands then, and the one that would be ripe. */
export default function FeedHour(props: {
  readonly house: House;
  readonly bake: string;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  const focus = createMemo(() => focusOn(props.house.kitchen(), props.bake));
  const now = createMemo(() => Math.floor(props.house.now() / MINUTE) * MINUTE);
  const input = createMemo(() => feedInput(props.house.kitchen(), focus()!, now()));
  const [chosen, setChosen] = createSignal<Instant | null>(null);
  const at = (): Instant => chosen() ?? onStep(ripeAt(input()) ?? now() + 12 * HOUR);
  const offer = createMemo(() => feedFor(input(), at()));
  const stands = createMemo(() => feedStands(input(), at()));
  const seed = (): number =>
    offer()?.recipe.lines.feed.find(({ item }) => item === 'seed')?.grams ?? 0;
  const air = (): string => {
    const { kitchen } = atMix(mixInput(props.house.kitchen(), focus()!.bake));
    return showHeat(kitchen.celsius, props.house.ways());
  };
  const lineOf = (line: WeighLine): string =>
    fill(readThrough.line, shown({ grams: line.grams, name: tellLine(line) }, props.house.ways()));
  const take = (): void => {
    const value = String(seed());
    void props.house
      .take({ kind: 'press', who: props.bake, act: 'answer', item: 'seed', value })
      .then(() => props.onTurn(null));
  };
  /** So much earlier or later, as far as a feed may be planned. */
  const Step = (step: { readonly by: number; readonly label: string }): JSX.Element => (
    <Control
      label={step.label}
      fresh={step.label}
      disabled={at() + step.by <= now() || at() + step.by > now() + MOST}
      onPress={() => setChosen(at() + step.by)}
    />
  );
  return (
    <Show when={focus()}>
      <Sheet title={feed.ask}>
        <div class="feed-hour">
          <div class="feed-hour-step">
            <Step by={-MUCH} label={feed.much.earlier} />
            <Step by={-STEP} label={feed.earlier} />
            <output class="feed-hour-at">
              {`${props.house.day(at())} ${props.house.hour(at())}`}
            </output>
            <Step by={STEP} label={feed.later} />
            <Step by={MUCH} label={feed.much.later} />
          </div>
          <p>{unbroken(fill(feed.stands[stands()], { ratio: showRatio(input().recipe) }))}</p>
          <Show when={offer()} fallback={<p>{feed.none}</p>}>
            {(one) => (
              <>
                <p>{unbroken(fill(feed.offer, { ratio: showRatio(one().recipe) }))}</p>
                <ul>
                  <For each={one().recipe.lines.feed}>
                    {(line) => <li>{unbroken(lineOf(line))}</li>}
                  </For>
                </ul>
                <Show when={one().doubt}>
                  <p>{feed.rough}</p>
                </Show>
              </>
            )}
          </Show>
          <p>{unbroken(fill(feed.guess, { celsius: air() }))}</p>
        </div>
        <div class="sheet-grid">
          <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />
          <Show when={offer()}>
            <Control
              label={fill(feed.take, { grams: showWeight(seed(), props.house.ways()) })}
              fresh="take"
              disabled={!props.house.holds}
              onPress={take}
            />
          </Show>
        </div>
      </Sheet>
    </Show>
  );
}
