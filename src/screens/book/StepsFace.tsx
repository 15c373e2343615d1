import { createSignal, For, Show, type JSX } from 'solid-js';
import type { Process } from '../../core/formula/formula.ts';
import {
  FOLD_LIMITS,
  limitsOf,
  type Limits,
  type ProcessPart,
} from '../../core/formula/process-limits.ts';
import { bookLines, bookSteps } from '../../core/speech/en/book.ts';
import { processParts } from '../../core/speech/en/notices.ts';
import { fill } from '../../core/speech/fill.ts';
import { showLength } from '../../core/speech/lengths.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';
import type { Editing } from './editing.ts';
import { NumberFace } from './NumberFace.tsx';
import { Warnings } from './Warnings.tsx';

/** A number of the process, how it is told and within what it is usual. */
interface Step {
  readonly key: string;
  readonly label: string;
  readonly ask: string;
  readonly value: string;
  readonly unit: string;
  readonly usual: Limits;
  readonly most: number;
  with(n: number): Process;
}

/** As in the trade, or a stretch that a reader takes: three days. */
const MOST = 4320;
/** A wanted rise, %: trade.md's clock serves up to 110; what can be kept is wider. */
const RISE = { least: 50, most: 100 } as const;

/** The parts that a process uses, in the order they come. */
const ORDER: readonly ProcessPart[] = [
  'rest',
  'benchRest',
  'counter',
  'retard',
  'warm',
  'preheat',
  'lidded',
  'open',
  'recovery',
  'cool',
];

function stepsOf(process: Process): readonly Step[] {
  const limits = limitsOf(process);
  const parts = ORDER.flatMap((part): Step[] => {
    const usual = limits[part];
    // A tin has no lid, and a process without a cold rise gets none by a number.
    if (!usual || usual.most === 0) return [];
    return [
      {
        key: part,
        label: processParts[part],
        ask: fill(bookSteps.ask, { part: processParts[part] }),
        value: showLength(process[part]),
        unit: 'min',
        usual,
        most: MOST,
        with: (n) => ({ ...process, [part]: n }),
      },
    ];
  });
  const gaps = process.touches.map(({ kind, after: minutes }, i): Step => {
    const n = process.touches.slice(0, i + 1).filter((one) => one.kind === kind).length;
    const label = fill(bookSteps.touch[kind], { n });
    return {
      key: `touch ${i}`,
      label,
      ask: fill(bookSteps.ask, { part: label }),
      value: showLength(minutes),
      unit: 'min',
      usual: FOLD_LIMITS,
      most: MOST,
      with: (n) => ({
        ...process,
        touches: process.touches.map((one, at) => (at === i ? { ...one, after: n } : one)),
      }),
    };
  });
  const rise: Step = {
    key: 'rise',
    label: bookSteps.rise,
    ask: bookSteps.riseAsk,
    value: fill(bookLines.percent, { percent: process.rise }),
    unit: '%',
    usual: RISE,
    most: 300,
    with: (n) => ({ ...process, rise: n }),
  };
  return [...parts.slice(0, 1), ...gaps, rise, ...parts.slice(1)];
}

/** Least that a part may be without becoming another process: a cold or a warm rise stays one. */
const leastOf = (key: string): number =>
  key === 'retard' || key === 'warm' ? 1 : key === 'rise' ? 10 : 0;

/** The minutes of a formula's process, each within what is usual or told that it is not. */
export function StepsFace(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly onBack: () => void;
}): JSX.Element {
  const [at, setAt] = createSignal<string | null>(null);
  const steps = () => stepsOf(props.editing.formula().process);
  const keys = () => steps().map(({ key }) => key);
  const stepOf = (key: string) => steps().find((one) => one.key === key);
  const usual = ({ usual: { least, most }, unit }: Step): string =>
    fill(bookSteps.usual, { least, most, unit });
  return (
    <Show
      when={at()}
      keyed
      fallback={
        <BookPage
          wide
          back={props.editing.formula().name}
          onBack={() => props.onBack()}
          words={
            <Words headline={bookSteps.title} detail={bookSteps.detail}>
              <Warnings of={props.editing.stepWarnings()} />
              <div class="book-grid book-lines book-top">
                <For each={keys()}>
                  {(key) => (
                    <Control
                      label={stepOf(key)?.label ?? ''}
                      value={stepOf(key)?.value}
                      fresh={key}
                      disabled={!props.house.holds}
                      onPress={() => setAt(key)}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
        />
      }
    >
      {(key) => (
        <NumberFace
          house={props.house}
          ask={stepOf(key)!.ask}
          unit={stepOf(key)!.unit}
          least={leastOf(key)}
          most={stepOf(key)!.most}
          now={usual(stepOf(key)!)}
          back={bookSteps.title}
          onTake={(typed) => {
            const old = props.editing.formula();
            props.editing.change({ ...old, process: stepOf(key)!.with(typed) });
          }}
          onBack={() => setAt(null)}
        />
      )}
    </Show>
  );
}
