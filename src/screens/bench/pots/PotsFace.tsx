import { createMemo, createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import { deadlineOf } from '../../../../machines/kitchen/dues.ts';
import { stageOf } from '../../../../machines/kitchen/stage-of.ts';
import type { LoadPlan } from '../../../core/oven/lanes.ts';
import { TRAY_LANE } from '../../../core/records/lane.ts';
import { controls } from '../../../core/speech/words/controls.ts';
import { potsPage } from '../../../core/speech/words/pots-page.ts';
import { fill } from '../../../core/speech/fill.ts';
import { MINUTE, type Instant } from '../../../core/units.ts';
import { Control } from '../../../parts/Control.tsx';
import { LanesChart } from '../../../parts/LanesChart.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import type { House } from '../../house.ts';
import { potTitle } from '../../pot-of.ts';
import { ovenPlan } from '../oven-plan.ts';
import type { ReadingPage } from '../readings/page.ts';
import { lanesView, type Read } from './lanes-view.ts';
import { LanesTable } from './LanesTable.tsx';
import { loafNumber } from './loaf-name.ts';
import { PotOutSheet } from './PotOutSheet.tsx';
import { QueueSheet } from './QueueSheet.tsx';
import { lastWords, sayLanes } from './say-lanes.ts';
import './PotsFace.css';

/** Before it is measured: a letter's width as a share of a lane's. */
const LETTER = 0.018;

/** Every pot as a lane: what is in it, what goes in next and when; and what may be changed about that. */
export default function PotsFace(props: {
  readonly house: House;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  const [face, setFace] = createSignal<'chart' | 'table' | 'queue' | 'potOut'>('chart');
  const [letter, setLetter] = createSignal(LETTER);
  const [page, setPage] = createSignal(0);
  const house = props.house;
  const kitchen = () => house.kitchen();
  const hour = (at: Instant): string => house.hour(at);
  // A minute is as fine as anybody reads it.
  const now = createMemo(() => Math.floor(house.now() / MINUTE) * MINUTE);
  const plan = createMemo((): LoadPlan | null => ovenPlan(kitchen(), house.equipment(), now()));
  const read = (): Read => {
    const { lanes, oven } = kitchen();
    return {
      hour,
      pot: (lane) => potTitle(lane) ?? potsPage.one,
      number: (loaf) => String(loafNumber(kitchen(), loaf)),
      dropped: Object.keys(lanes).filter(
        (lane) =>
          lane !== TRAY_LANE &&
          oven.context.lanes !== undefined &&
          !oven.context.lanes.includes(lane),
      ),
      hotAt: (lane) => {
        const at = lanes[lane];
        return at && stageOf(at) === 'recover' ? deadlineOf(at) : null;
      },
      lidOn: (lane) => {
        const at = lanes[lane];
        return at !== undefined && stageOf(at) === 'lift';
      },
    };
  };
  const back = () => <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />;
  let top: HTMLHeadingElement | undefined;
  /** Another face begins at its top. */
  const turn = (to: ReturnType<typeof face>): void => {
    setFace(to);
    const sheet = top?.closest('.sheet');
    if (sheet) sheet.scrollTop = 0;
  };
  const show = (n: number): void => {
    setPage(n);
    turn('chart');
  };
  const toChart = (): void => void setFace('chart');
  return (
    <Switch>
      <Match when={plan() === null}>
        <Sheet title={potsPage.title}>
          <p>{potsPage.none}</p>
          {back()}
        </Sheet>
      </Match>
      <Match when={face() === 'queue'}>
        <QueueSheet house={house} plan={plan()!} onBack={toChart} />
      </Match>
      <Match when={face() === 'potOut'}>
        <PotOutSheet house={house} onBack={toChart} />
      </Match>
      <Match when={plan()}>
        {(of) => {
          const view = createMemo(() =>
            lanesView(of(), now(), read(), { letter: letter(), page: page() }),
          );
          const last = (): string => lastWords(of(), now(), hour, (at) => house.day(at));
          const alt = (): string =>
            fill(potsPage.alt, {
              count: of().lanes.length,
              loaves: of().lanes.flatMap(({ turns }) => turns).length,
              time: of().lastOut === null ? '–' : hour(of().lastOut!),
            });
          return (
            <Sheet title={last()} headless>
              <h1 class="pots-last" ref={top}>
                {last()}
              </h1>
              <Show
                when={face() === 'table'}
                fallback={
                  <LanesChart
                    {...view()}
                    lid={potsPage.lid}
                    out={potsPage.out}
                    alt={alt()}
                    onRoom={setLetter}
                  />
                }
              >
                <LanesTable plan={of()} read={read()} />
              </Show>
              <div class="pots-controls">
                {back()}
                <Control
                  label={potsPage.say}
                  onPress={() => house.say(sayLanes(of(), now(), hour))}
                />
                <Show when={face() === 'chart' && view().goesOn}>
                  <Control label={potsPage.later} onPress={() => show(page() + 1)} />
                </Show>
                <Show when={face() === 'chart' && page() > 0}>
                  <Control label={potsPage.back} onPress={() => show(0)} />
                </Show>
                <Control label={potsPage.queue} onPress={() => setFace('queue')} />
                <Control label={potsPage.aPotIsOut} onPress={() => setFace('potOut')} />
                <Control
                  label={face() === 'table' ? potsPage.chart : potsPage.table}
                  onPress={() => turn(face() === 'table' ? 'chart' : 'table')}
                />
              </div>
            </Sheet>
          );
        }}
      </Match>
    </Switch>
  );
}
