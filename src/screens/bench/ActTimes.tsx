import { Show, type JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { controls } from '../../core/speech/words/controls.ts';
import { countdown } from '../../core/speech/words/running.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Countdown } from '../../parts/Countdown.tsx';
import type { House } from '../house.ts';
import type { Focus } from '../focus.ts';
import type { BenchView } from './view.ts';

type Mark = keyof typeof countdown;

/** Which wait a call came out of: its words say past what it is. */
const CAME_FROM: Readonly<Record<string, Mark>> = {
  'levain.look': 'look',
  'mix.salt': 'end',
  'bulk.fold': 'touch',
  'bulk.spread': 'touch',
  'bulk.look': 'look',
  'shape.finalShape': 'end',
  'proof.toFridge': 'end',
  'proof.look': 'look',
  'proof.poke': 'look',
  'cool.handOver': 'end',
  poke: 'hot',
  lift: 'lid',
  vent: 'vent',
  judge: 'colour',
};

/**
 * The running time: down to the deadline, or up from the instant a call began. Beside a wait that hands
 * may cut short stands the press that does: far from the slab, for it goes on past the look.
 */
export function ActTimes(props: {
  readonly house: House;
  readonly view: BenchView;
  readonly focus: Focus;
  readonly mark: number | undefined;
}): JSX.Element {
  const mark = (): Mark => props.view.waits ?? CAME_FROM[props.view.stage] ?? 'end';
  /** The place begins with the bake's name where more than one runs. */
  const where = (): string | undefined =>
    props.view.whose === null ? undefined : props.view.place.slice(props.view.whose.length);
  const entered = (): number => props.focus.machine.context.entered[props.view.stage] ?? 0;
  const deadline = (): number => props.view.deadline ?? entered();
  return (
    <Countdown
      name={props.view.whose ?? props.view.place}
      where={where()}
      mark={props.mark}
      label={countdown[mark()].to}
      labelPast={countdown[mark()].past}
      ends={
        props.view.deadline === null
          ? undefined
          : fill(bench.endsAt, { time: props.house.hour(deadline()) })
      }
      deadline={deadline()}
      now={props.house.now()}
    >
      <Show when={props.view.early}>
        {(early) => (
          <Control
            label={controls.readyNow}
            fresh={`${props.view.who} ${props.view.stage} ${entered()}`}
            disabled={!props.house.holds}
            onPress={() => void props.house.take(early())}
          />
        )}
      </Show>
    </Countdown>
  );
}
