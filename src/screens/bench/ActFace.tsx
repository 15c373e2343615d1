import { Show, type JSX } from 'solid-js';
import { MINUTE } from '../../core/units.ts';
import { bench } from '../../core/speech/en/bench.ts';
import { controls } from '../../core/speech/en/controls.ts';
import { countdown, nothingRuns } from '../../core/speech/en/running.ts';
import { said } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { takeBackTarget } from '../../../machines/kitchen/take-back.ts';
import type { House } from '../house.ts';
import type { Pad } from './PadFace.tsx';
import type { BenchView, Third } from './view.ts';

/** The big press: the act is done. */
export function ActSlab(props: {
  readonly house: House;
  readonly view: BenchView;
  readonly fresh: unknown;
  readonly onPad: (pad: Pad) => void;
}): JSX.Element {
  const press = (): void => {
    const { deed } = props.view.slab;
    if (deed) void props.house.take(deed);
    else props.onPad({ what: props.view.measures, typed: null, odd: false });
  };
  return (
    <Slab
      label={props.view.slab.label}
      then={props.view.slab.then}
      tone={props.view.call === 'hot' ? 'hot' : 'normal'}
      fresh={`${props.fresh} ${props.view.headline} ${props.view.slab.label}`}
      disabled={!props.house.holds}
      onPress={press}
    />
  );
}

const LABELS: Readonly<Record<Third, string>> = {
  reading: controls.newReading,
  longer: controls.howMuchLonger,
  ready: controls.itsReady,
  why: controls.notNowWhy,
  piece: bench.weighPiece,
  probe: controls.noProbe,
};

/** Take that back, say that again, and the one control that fits the act. */
export function ActControls(props: {
  readonly house: House;
  readonly view: BenchView;
  readonly onPad: (pad: Pad) => void;
}): JSX.Element {
  const longer = (): string => {
    const { deadline, waits } = props.view;
    if (deadline === null || waits === null) return nothingRuns;
    const minutes = Math.max(0, Math.ceil((deadline - props.house.now()) / MINUTE));
    return fill(countdown[waits as keyof typeof countdown].ask, said({ minutes }));
  };
  const third = (): void => {
    const { third: what, ready, who, care, detail } = props.view;
    if (what === 'reading' || what === 'piece') {
      props.onPad({ what: props.view.measures, typed: null, odd: false });
    } else if (what === 'ready' && ready) void props.house.take(ready);
    else if (what === 'probe') void props.house.take({ kind: 'press', who, act: 'unmeasured' });
    else props.house.say(what === 'why' ? (care ?? detail) : longer());
  };
  return (
    <>
      <Control
        label={controls.takeBack}
        disabled={!props.house.holds || takeBackTarget(props.house.kitchen()) === null}
        onPress={() => void props.house.takeBack()}
      />
      <Control label={controls.sayAgain} onPress={() => props.house.say(props.view.spoken)} />
      <Show when={LABELS[props.view.third]}>
        {(label) => <Control label={label()} onPress={third} />}
      </Show>
    </>
  );
}
