import { For, type JSX } from 'solid-js';
import type { MinuteOfDay } from '../../../core/kitchen/equipment.ts';
import { doughLoads, doughPage } from '../../../core/speech/words/circle-dough.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showLength } from '../../../core/speech/lengths.ts';
import { MINUTE, type Minutes } from '../../../core/units.ts';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { batchName, type DoughDay } from './dough-day.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** The oven's loads in their order: by the clock where its hours are said, else counted from the first. */
export function LoadsFace(props: {
  readonly house: House;
  readonly all: DoughDay;
  /** The first loading; null: not said. */
  readonly from: MinuteOfDay | null;
  /** Of the bake day; from 1440 on of the next. */
  readonly hour: (minute: Minutes) => string;
  readonly onBack: () => void;
}): JSX.Element {
  const minutes = (): Minutes => (props.all.oven.lastOut ?? 0) / MINUTE;
  const when = (after: Minutes): string =>
    props.from === null
      ? after === 0
        ? doughLoads.start
        : showLength(after)
      : props.hour(props.from + after);
  const runs = () =>
    props.all.baking.flatMap(({ batch, run }) => (run === null ? [] : { batch, run }));
  return (
    <CirclePage
      wide
      back={doughPage.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={fill(doughLoads.title, {
            loads: props.all.oven.loads.length,
            minutes: showLength(minutes()),
          })}
          detail={
            props.from === null
              ? doughLoads.counted
              : fill(doughLoads.at, { time: when(0), until: when(minutes()) })
          }
        >
          <table class="circle-table circle-top">
            <thead>
              <tr>
                <th scope="col">{softWords(doughLoads.bread)}</th>
                <th scope="col">{softWords(doughLoads.loads)}</th>
                <th scope="col">{softWords(doughLoads.first)}</th>
                <th scope="col">{softWords(doughLoads.out)}</th>
                <th scope="col">{softWords(doughLoads.cool)}</th>
              </tr>
            </thead>
            <tbody>
              <For each={runs()}>
                {({ batch, run }) => (
                  <tr>
                    <th scope="row">{softWords(batchName(batch, props.house.ways()))}</th>
                    <td>{run.loads}</td>
                    <td>{unbroken(when(run.from))}</td>
                    <td>{unbroken(when(run.out))}</td>
                    <td>{unbroken(when(run.out + run.batch.cool))}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </Words>
      }
    />
  );
}
