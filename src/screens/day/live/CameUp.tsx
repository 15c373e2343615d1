import { createSignal, For, Match, Show, Switch, type JSX } from 'solid-js';
import type { Laid, Trouble } from '../../../core/day/laid/came-up.ts';
import type { DayPlan } from '../../../core/day/laid/day-plan.ts';
import type { Stands } from '../../../core/day/laid/live-question.ts';
import { laidAgain } from '../../../core/day/laid/moved.ts';
import { perishableIn } from '../../../core/day/plan/perishable.ts';
import { cameUp, live as words } from '../../../core/speech/words/live.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import { tellWay } from '../../../core/speech/tell-ways.ts';
import { MINUTE, type Instant, type Minutes } from '../../../core/units.ts';
import { Control } from '../../../parts/Control.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import type { House } from '../../house.ts';
import { waysOut } from './live-day.ts';

/** One leaves in, and stays for, so many minutes: what is asked with one press each. */
const LEAVING: readonly Minutes[] = [10, 30, 60, 120];
const AWAY: readonly Minutes[] = [60, 120, 180, 240, 360, 480];
const LATE: readonly Minutes[] = [60, 120, 180, 240];
const MENDED: readonly Minutes[] = [60, 120, 240, 480, 1440];

type Page = 'what' | 'when' | 'away' | 'levain' | 'oven' | 'working' | 'ways';

/** Something came up: what, for how long, then one plan and one fallback, each taken by one press. */
export function CameUp(props: {
  readonly house: House;
  readonly plan: DayPlan;
  /** What can have come up, as the day stands. */
  readonly stands: Stands;
  readonly time: (at: Instant) => string;
  readonly onTaken: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [page, setPage] = createSignal<Page>('what');
  const [leaving, setLeaving] = createSignal<Instant>(0);
  const [ways, setWays] = createSignal<readonly Laid[]>([]);
  const [trouble, setTrouble] = createSignal<Trouble['trouble']>('away');
  const now = (): Instant => Math.floor(props.house.now() / MINUTE) * MINUTE;
  const spoils = (): boolean =>
    props.plan.ask.bakes.some(({ bake, recipe }) => bake !== null && perishableIn(recipe));

  const find = async (trouble: Trouble): Promise<void> => {
    setTrouble(trouble.trouble);
    setPage('working');
    setWays(await waysOut(props.house, props.plan, trouble));
    setPage('ways');
  };
  const take = async (laid: Laid): Promise<void> => {
    const plan = laidAgain(props.plan, laid.live, laid.result, laid.ask);
    await props.house.take({ kind: 'plan', plan });
    props.onTaken();
  };
  const Lengths = (list: {
    readonly of: readonly Minutes[];
    readonly label?: string;
    readonly onPick: (minutes: Minutes) => void;
  }): JSX.Element => (
    <div class="sheet-grid">
      <For each={list.of}>
        {(minutes) => (
          <Control
            label={
              list.label ? fill(list.label, { length: showLength(minutes) }) : showLength(minutes)
            }
            onPress={() => list.onPick(minutes)}
          />
        )}
      </For>
      <Control label={words.back} onPress={() => setPage('what')} />
    </div>
  );
  const Way = (one: {
    readonly laid: Laid;
    readonly title: string;
    readonly strong: boolean;
  }): JSX.Element => (
    <section class="live-way">
      <h2 class="sheet-part">{one.title}</h2>
      <p>{unbroken(tellWay(one.laid, props.time, props.house.ways()).join(' '))}</p>
      <Control
        label={cameUp.takeThis}
        name={`${one.title}: ${cameUp.takeThis}`}
        strong={one.strong}
        disabled={!props.house.holds}
        onPress={() => void take(one.laid)}
      />
    </section>
  );
  return (
    <Switch>
      <Match when={page() === 'what'}>
        <Sheet title={cameUp.title}>
          <div class="sheet-grid">
            <Control label={cameUp.away} onPress={() => setPage('when')} />
            <Control label={cameUp.overslept} onPress={() => void find({ trouble: 'overslept' })} />
            <Show when={props.stands.fold}>
              {(missed) => (
                <Control
                  label={cameUp.foldMissed}
                  onPress={() => {
                    void find({ trouble: 'foldMissed', ...missed() });
                  }}
                />
              )}
            </Show>
            <Show when={props.stands.levain !== null}>
              <Control label={cameUp.levainLate} onPress={() => setPage('levain')} />
            </Show>
            <Control label={cameUp.ovenDead} onPress={() => setPage('oven')} />
            <Control label={words.back} onPress={() => props.onBack()} />
          </div>
        </Sheet>
      </Match>
      <Match when={page() === 'when'}>
        <Sheet title={cameUp.when}>
          <Lengths
            of={LEAVING}
            label={cameUp.inLength}
            onPick={(minutes) => {
              setLeaving(now() + minutes * MINUTE);
              setPage('away');
            }}
          />
        </Sheet>
      </Match>
      <Match when={page() === 'away'}>
        <Sheet title={cameUp.howLong}>
          <Lengths
            of={AWAY}
            onPick={(minutes) =>
              void find({ trouble: 'away', from: leaving(), to: leaving() + minutes * MINUTE })
            }
          />
        </Sheet>
      </Match>
      <Match when={page() === 'levain'}>
        <Sheet title={cameUp.howLate}>
          <Lengths
            of={LATE}
            onPick={(by) =>
              void find({ trouble: 'levainLate', batch: props.stands.levain ?? '', by })
            }
          />
        </Sheet>
      </Match>
      <Match when={page() === 'oven'}>
        <Sheet title={cameUp.ovenBack}>
          <Lengths
            of={MENDED}
            label={cameUp.inLength}
            onPick={(minutes) =>
              void find({ trouble: 'ovenDead', from: now(), to: now() + minutes * MINUTE })
            }
          />
        </Sheet>
      </Match>
      <Match when={page() === 'working'}>
        <Sheet title={words.working}>
          <div class="sheet-grid">
            <Control label={words.back} onPress={() => props.onBack()} />
          </div>
        </Sheet>
      </Match>
      <Match when={page() === 'ways'}>
        <Sheet title={ways().length > 0 ? cameUp[trouble()] : cameUp.nothing}>
          <div class="live-ways">
            <Show when={ways()[0]}>
              {(laid) => <Way laid={laid()} title={cameUp.best} strong />}
            </Show>
            <Show
              when={ways()[1]}
              fallback={
                <section class="live-way">
                  <h2 class="sheet-part">{ways().length > 0 ? cameUp.fallback : cameUp.best}</h2>
                  <p>{spoils() ? `${cameUp.flat} ${cameUp.spoils}` : cameUp.flat}</p>
                </section>
              }
            >
              {(laid) => <Way laid={laid()} title={cameUp.fallback} strong={false} />}
            </Show>
          </div>
          <Control label={words.back} onPress={() => props.onBack()} />
        </Sheet>
      </Match>
    </Switch>
  );
}
