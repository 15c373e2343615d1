import { createMemo, type JSX } from 'solid-js';
import { returnCard } from '../../core/speech/words/running.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { MINUTE } from '../../core/units.ts';
import { ReturnCard } from '../../parts/ReturnCard.tsx';
import { heatsIn } from '../heats-in.ts';
import type { House } from '../house.ts';
import { placedName } from '../stage-names.ts';
import { calledOf } from '../timer-view.ts';
import { lastDone } from './last-done.ts';
import type { BenchView } from './view.ts';

/** Three lines at most: what is overdue, what was done last, what comes next. */
const linesOf = (house: House, view: BenchView): readonly string[] => {
  const late = house
    .kitchen()
    .attention.context.calls.filter(({ quiet }) => !quiet)
    .toSorted((a, b) => a.since - b.since)[0];
  const last = lastDone(house.records(), house.kitchen().starts);
  const name = placedName(view.who, view.stage, heatsIn(house.kitchen(), view.who));
  return [
    late
      ? fill(
          returnCard.overdue,
          shown({
            minutes: Math.max(0, Math.round((house.now() - late.since) / MINUTE)),
            name: calledOf(house.kitchen(), late),
          }),
        )
      : returnCard.nothingOverdue,
    last
      ? fill(returnCard.last, {
          name: placedName(last.who, last.stage, last.heats),
          time: house.hour(last.at),
        })
      : returnCard.nothingDone,
    view.deadline === null
      ? fill(returnCard.nextNow, { name })
      : fill(returnCard.next, { name, time: house.hour(view.deadline) }),
  ];
};

/** What happened while nobody looked; it goes only when it is read. */
export default function ReturnFace(props: {
  readonly house: House;
  readonly view: BenchView;
}): JSX.Element {
  const lines = createMemo(() => linesOf(props.house, props.view));
  return (
    <ReturnCard
      title={returnCard.title}
      lines={lines()}
      close={returnCard.close}
      onClose={() => props.house.readBack()}
    />
  );
}
