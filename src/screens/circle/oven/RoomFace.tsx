import { createMemo, createSignal, For, Match, Show, Switch, type JSX } from 'solid-js';
import type { DayKey } from '../../../core/circle/day-key.ts';
import { dayRoom } from '../../../core/circle/day-room.ts';
import { ovenBatches } from '../../../core/circle/oven-batch.ts';
import {
  breadsPage,
  hoursPage,
  loadsPage,
  roomPage,
} from '../../../core/speech/words/circle-oven.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { showDay } from '../../../core/speech/show-day.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import type { FaceProps } from '../face.ts';
import { loadsShown } from './loads-view.ts';
import { listedBreads, roomAskOf } from './room-ask.ts';
import { breadsShown, usesOf } from './room-view.ts';
import { BreadsTable, LoadsTable } from './RoomTables.tsx';
import { RoomBars, RoomTable } from './RoomUses.tsx';

/** The room a bake day has left: what is taken, what still goes of each bread, and its loads with hours. */
export function RoomFace(
  props: FaceProps & {
    readonly day: DayKey;
    /** What its slab leads back to. */
    readonly back: string;
  },
): JSX.Element {
  const [at, setAt] = createSignal<'bars' | 'table' | 'breads' | 'loads'>('bars');
  const ask = createMemo(() => roomAskOf(props.house, props.circle, props.day));
  const room = createMemo(() => dayRoom(ask()));
  const uses = createMemo(() => usesOf(ask(), listedBreads(props.house)));
  const loads = createMemo(() => loadsShown(ask(), props.house.ways(), props.house.ways().clock));
  const date = (): string => showDay(props.day);
  const nameOf = (bread: string): string =>
    showBread(ask().breads.find(({ id }) => id === bread)?.name ?? '');
  const uncounted = createMemo(() => {
    const lines = room().orders.flatMap((order) => order.lines);
    const { unknown } = ovenBatches(lines, ask().breads, ask().kitchen, ask().weighIns);
    return lines.reduce((sum, { bread, count }) => sum + (unknown.includes(bread) ? count : 0), 0);
  });
  const told = (): readonly string[] => [
    ...room().taken.flatMap(({ places, bread }) =>
      places === 0 ? fill(roomPage.nowhere, { name: nameOf(bread) }) : [],
    ),
    ...(uncounted() > 0 ? [fill(roomPage.unknown, { count: uncounted() })] : []),
  ];
  const detail = (): string | undefined => {
    if (room().from === null) return roomPage.askHours;
    return room().orders.length === 0 ? roomPage.empty : undefined;
  };
  const hours = (): JSX.Element => (
    <Control
      label={hoursPage.title}
      onPress={() => props.onOpen({ at: 'oven hours', from: roomPage.title })}
    />
  );
  const within = (
    headline: string,
    said: string | undefined,
    more: JSX.Element,
    beside?: JSX.Element,
  ): JSX.Element => (
    <CirclePage
      wide
      back={roomPage.title}
      onBack={() => setAt('bars')}
      words={
        <Words headline={headline} detail={said}>
          <div class="circle-top">{more}</div>
        </Words>
      }
      controls={beside}
    />
  );
  return (
    <Switch
      fallback={
        <CirclePage
          wide
          back={props.back}
          onBack={() => props.onBack()}
          words={
            <Words headline={fill(roomPage.headline, { date: date() })} detail={detail()}>
              <div class="circle-top">
                <Show when={at() === 'table'} fallback={<RoomBars date={date()} uses={uses()} />}>
                  <RoomTable uses={uses()} />
                </Show>
              </div>
              <Show when={told().length > 0}>
                <ul class="circle-told">
                  <For each={told()}>{(line) => <li class="barred">{line}</li>}</For>
                </ul>
              </Show>
            </Words>
          }
          controls={
            <>
              <Control
                label={at() === 'table' ? roomPage.bars : roomPage.table}
                onPress={() => setAt(at() === 'table' ? 'bars' : 'table')}
              />
              <Control label={breadsPage.press} onPress={() => setAt('breads')} />
              <Control label={loadsPage.press} onPress={() => setAt('loads')} />
              {hours()}
            </>
          }
        />
      }
    >
      <Match when={at() === 'breads'}>
        {within(
          fill(breadsPage.headline, { date: date() }),
          undefined,
          <BreadsTable breads={breadsShown(ask(), listedBreads(props.house))} />,
        )}
      </Match>
      <Match when={at() === 'loads'}>
        {within(
          fill(loadsPage.headline, { date: date() }),
          loads().detail,
          <>
            <Show when={loads().loads.length > 0}>
              <LoadsTable loads={loads().loads} />
            </Show>
            <Show when={loads().told.length > 0}>
              <ul class="circle-told">
                <For each={loads().told}>{(line) => <li class="barred">{line}</li>}</For>
              </ul>
            </Show>
          </>,
          <Show when={room().from === null}>{hours()}</Show>,
        )}
      </Match>
    </Switch>
  );
}
