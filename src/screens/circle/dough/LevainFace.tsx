import { For, Show, type JSX } from 'solid-js';
import type { BaseDough } from '../../../core/circle/base-dough.ts';
import { KEEP_BACK } from '../../../core/formula/levain-to-make.ts';
import { doughLevain, doughPage } from '../../../core/speech/words/circle-dough.ts';
import { fill } from '../../../core/speech/fill.ts';
import { tellLine } from '../../../core/speech/tell-line.ts';
import { showWeight } from '../../../core/speech/weights.ts';
import type { Grams, Instant } from '../../../core/units.ts';
import { unbroken } from '../../../parts/unbroken.ts';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { batchName } from './dough-day.ts';
import { feedLines, type PlannedFeed } from './planned-feeds.ts';
import { softWords } from '../../../parts/soft-words.ts';

/** The levain of one dough: its jar, line by line, and when a plan feeds it. */
export function LevainFace(props: {
  readonly house: House;
  readonly dough: BaseDough;
  readonly planned: readonly PlannedFeed[];
  readonly hour: (at: Instant) => string;
  readonly controls: JSX.Element;
  readonly onBack: () => void;
}): JSX.Element {
  const units = () => props.house.ways();
  const weight = (grams: Grams): string => showWeight(grams, units());
  const lines = () => feedLines(props.dough, props.planned);
  const all = (): Grams => lines().reduce((sum, { grams }) => sum + Math.round(grams * 10), 0) / 10;
  const fed = ({ batch, at, ratio }: PlannedFeed): string =>
    fill(ratio === null ? doughLevain.feedPlain : doughLevain.feed, {
      name: batchName(batch, units()),
      time: props.hour(at),
      ratio: ratio ?? '',
    });
  return (
    <CirclePage
      wide
      back={doughPage.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={fill(doughLevain.title, { grams: weight(all()) })}
          detail={fill(doughLevain.detail, {
            grams: weight(props.dough.levain),
            keepBack: weight(KEEP_BACK),
          })}
        >
          <table class="circle-table circle-top">
            <thead>
              <tr>
                <th scope="col">{softWords(doughLevain.line)}</th>
                <th scope="col">{softWords(doughLevain.grams)}</th>
              </tr>
            </thead>
            <tbody>
              <For each={lines()}>
                {(line) => (
                  <tr>
                    <th scope="row">{softWords(tellLine(line))}</th>
                    <td>{unbroken(weight(line.grams))}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
          <Show
            when={props.planned.length > 0}
            fallback={<p class="act-detail">{doughLevain.noPlan}</p>}
          >
            <For each={props.planned}>
              {(feed) => <p class="act-detail">{unbroken(fed(feed))}</p>}
            </For>
          </Show>
        </Words>
      }
      controls={props.controls}
    />
  );
}
