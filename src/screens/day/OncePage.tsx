import { createSignal, Match, Switch, type JSX } from 'solid-js';
import type { Span } from '../../core/day/plan/types.ts';
import { awayPage } from '../../core/speech/en/day.ts';
import { MINUTE } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import { wallOf } from './day-hours.ts';
import { DayFace } from './DueFaces.tsx';
import { Asks, Half, What, type Face, type PageProps } from './WindowParts.tsx';
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
  const step = (face: 'from' | 'to'): JSX.Element => (
    <Asks
      house={props.house}
      headline={awayPage[face]}
      detail={onceWords(props.house, props.span)}
      back={name()}
      onBack={all}
    >
      <Half
        label={awayPage[face]}
        shown={props.house.hour(props.span[face])}
        onStep={(by) => {
          const to = props.span[face] + by * MINUTE;
          props.onChange(face === 'from' ? withFrom(props.span, to) : withTo(props.span, to));
        }}
      />
    </Asks>
  );
  return (
    <Switch
      fallback={
        <Asks
          house={props.house}
          headline={name()}
          back={awayPage.back}
          controls={<Control label={awayPage.remove} onPress={() => props.onRemove()} />}
          onBack={() => props.onBack()}
        >
          <div class="day-grid">
            {cell(awayPage.what, name(), 'what')}
            {cell(awayPage.date, props.house.day(props.span.from), 'days')}
            {cell(awayPage.from, props.house.hour(props.span.from), 'from')}
            {cell(awayPage.to, props.house.hour(props.span.to), 'to')}
          </div>
        </Asks>
      }
    >
      <Match when={face() === 'what'}>
        <Asks house={props.house} headline={awayPage.what} back={name()} onBack={all}>
          <What
            name={name()}
            onPick={(next) => {
              props.onChange({ ...props.span, name: next });
              all();
            }}
          />
        </Asks>
      </Match>
      <Match when={face() === 'days'}>
        <DayFace
          house={props.house}
          headline={awayPage.date}
          now={false}
          back={name()}
          onDay={toDay}
          onBack={all}
        />
      </Match>
      <Match when={face() === 'from'}>{step('from')}</Match>
      <Match when={face() === 'to'}>{step('to')}</Match>
    </Switch>
  );
}
