import type { JSX } from 'solid-js';
import type { Call } from '../../../machines/attention/attention.ts';
import { leadOf } from '../../../machines/tasks.ts';
import type { House } from '../house.ts';
import { KitchenEar } from '../KitchenEar.tsx';
import { agesLeft } from '../way-back.ts';
import type { BenchView } from './view.ts';

/**
 * The ear beside an act: its call may be put off there, once it was hushed and nothing else rings. Who turned
 * from small hands to the baker's view has the way back there for a while.
 */
export function BenchEar(props: {
  readonly house: House;
  readonly view: BenchView;
  readonly onMore: () => void;
}): JSX.Element {
  const hushed = (): Call | null => {
    const { who, stage, task } = props.view;
    if (props.house.ringing() !== null) return null;
    const { calls, heard } = props.house.kitchen().attention.context;
    const wanted = task === null ? stage : leadOf(task);
    const call = calls.find((one) => one.who === who && one.stage === wanted);
    return call && heard.includes(call.id) ? call : null;
  };
  const toChild = (): (() => void) | undefined => {
    const small = agesLeft(props.house);
    return small === null ? undefined : () => props.house.choose({ small });
  };
  return (
    <KitchenEar
      house={props.house}
      hushed={hushed()}
      toChild={toChild()}
      onMore={() => props.onMore()}
    />
  );
}
