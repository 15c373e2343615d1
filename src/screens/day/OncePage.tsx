import { createSignal, Match, Switch, type JSX } from 'solid-js';
import type { Span } from '../../core/day/plan/types.ts';
import { awayPage } from '../../core/speech/words/day.ts';
import { showAway } from '../../core/speech/show-away.ts';
import { MINUTE } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import { AsksPage } from './AsksPage.tsx';
import { wallOf } from './day-hours.ts';
import { DayFace } from './DueFaces.tsx';
import { HalfPage, WhatPage, type Face, type PageProps } from './WindowParts.tsx';
import { onceWords, withFrom, withTo } from './windows.ts';

/** Hours of one day. */
export function OncePage(
  props: PageProps & { readonly span: Span; readonly onChange: (span: Span) => void },
): JSX.Element {
  const [face, setFace] = createSignal<Face>('all');
  const all = (): void => void setFace('all');
  const name = (): string => props.span.name ?? '';
  const cell = (label: string, value: string, to: Face): JSX.Element => (
    <Control label={label} value={value} onPress={() => setFace(to)} />
  );
  const toDay = (ahead: number): void => {
    const wall = wallOf(props.house);
    const from = wall.at(wall.day(ahead), wall.minute(props.span.from));
    props.onChange({ ...props.span, from, to: from + props.span.to - props.span.from });
    all();
  };
  const half = (end: 'from' | 'to'): JSX.Element => (
    <HalfPage
      house={props.house}
      end={end}
      name={name()}
      span={onceWords(props.house, props.span)}
      shown={props.house.hour(props.span[end])}
      onStep={(by) => {
        const to = props.span[end] + by * MINUTE;
        props.onChange(end === 'from' ? withFrom(props.span, to) : withTo(props.span, to));
      }}
      onBack={all}
    />
  );
  return (
    <Switch
      fallback={
        <AsksPage
          house={props.house}
          headline={showAway(name())}
          back={awayPage.back}
          controls={<Control label={awayPage.remove} onPress={() => props.onRemove()} />}
          onBack={() => props.onBack()}
        >
          <div class="day-grid">
            {cell(awayPage.what, showAway(name()), 'what')}
            {cell(awayPage.date, props.house.day(props.span.from), 'days')}
            {cell(awayPage.from, props.house.hour(props.span.from), 'from')}
            {cell(awayPage.to, props.house.hour(props.span.to), 'to')}
          </div>
        </AsksPage>
      }
    >
      <Match when={face() === 'what'}>
        <WhatPage
          house={props.house}
          name={name()}
          onPick={(name) => {
            props.onChange({ ...props.span, name });
            all();
          }}
          onBack={all}
        />
      </Match>
      <Match when={face() === 'days'}>
        <DayFace
          house={props.house}
          headline={awayPage.date}
          now={false}
          back={showAway(name())}
          onDay={toDay}
          onBack={all}
        />
      </Match>
      <Match when={face() === 'from'}>{half('from')}</Match>
      <Match when={face() === 'to'}>{half('to')}</Match>
    </Switch>
  );
}
