import {
  createEffect,
  createMemo,
  createSignal,
  For,
  onCleanup,
  onMount,
  Show,
  type JSX,
} from 'solid-js';
import { bench } from '../../../core/speech/words/bench.ts';
import { controls, keypad } from '../../../core/speech/words/controls.ts';
import {
  reading as words,
  readingNames,
  readingShort,
} from '../../../core/speech/words/readings.ts';
import { keysFor, showAmount } from '../../../core/speech/reading-text.ts';
import { afterPaint } from '../../../parts/after-paint.ts';
import { Control } from '../../../parts/Control.tsx';
import { letGo } from '../../../parts/focus-owed.ts';
import { NumberPad } from '../../../parts/NumberPad.tsx';
import { Pressable } from '../../../parts/Pressable.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import type { House } from '../../house.ts';
import { doubtOf, readingFrom } from './judge-number.ts';
import { isHot } from './hot.ts';
import { kindsAt } from './kinds.ts';
import { besideKeys, numberKinds, type NumberKind } from './number-kinds.ts';
import { numberPage, type ReadingPage } from './page.ts';
import { record } from './record.ts';
import { softWords } from '../../../parts/soft-words.ts';
import './readings.css';

/**
 * A new reading: keyed first, then the press that says what it is takes it. A sign, or a number whose
 * keypad is wanted first, is chosen while nothing is typed.
 */
export default function NewReadingSheet(props: {
  readonly house: House;
  readonly bake: string;
  readonly stage: string;
  readonly act: string;
  readonly onTurn: (page: ReadingPage | null) => void;
}): JSX.Element {
  const [typed, setTyped] = createSignal('');
  const [rest, setRest] = createSignal(false);
  const half = () => props.house.half(`${props.bake} ${props.act} new`);
  const kinds = createMemo(() => numberKinds(typed(), props.stage, props.house.ways()));
  const beside = () => besideKeys(kinds(), rest());
  // Where a core may be keyed at a hot oven, its caution comes before the probe goes in.
  const hot = createMemo((): boolean => {
    const first = kindsAt(props.stage).first.map(({ page }) => page);
    return first.some((page) => page.at === 'number' && isHot(props.house.kitchen(), page.slot));
  });
  onMount(() => hot() && props.house.say(words.hot));
  const title = (): string => {
    if (typed() === '') return words.begin;
    return kinds().length > 0 ? words.which : words.noKind;
  };
  // The likeliest of what may be pressed next: the press then waits for nothing that runs the first time.
  createEffect(() => {
    const [first] = kinds();
    if (first === undefined || !props.house.holds) return;
    const { house, bake } = props;
    const reading = readingFrom(first, false, house.ways());
    if (reading === null) return;
    onCleanup(afterPaint(() => house.foresee({ kind: 'reading', by: 'hand', bake, reading })));
  });
  const amount = ({ slot, typed: number }: NumberKind): string => {
    const units = props.house.ways();
    return showAmount(slot, keysFor(slot, 'possible', units).record(number), units);
  };
  const take = ({ slot, typed: number }: NumberKind): void => {
    const units = props.house.ways();
    const page = { ...numberPage(slot), typed: number };
    const begun = half();
    const reading = readingFrom(page, false, units);
    if (reading === null) {
      begun.keep('');
      props.house.say(doubtOf(page, units) ?? '');
      return props.onTurn({ ...page, asked: true });
    }
    letGo();
    void record({ house: props.house, bake: props.bake, page }, reading).then(() => {
      props.onTurn(null);
      afterPaint(() => begun.keep(''));
    });
  };
  return (
    <Sheet title={title()}>
      <div class="reading-new">
        <NumberPad
          label={words.number}
          unit=""
          words={{
            point: bench.point,
            clear: keypad.clear,
            hint: hot() ? words.hot : undefined,
            again: keypad.again,
          }}
          said={!hot()}
          half={half()}
          onText={(text) => {
            setTyped(text);
            setRest(false);
          }}
        />
        <div class="reading-which" role="group" aria-label={title()}>
          <Show
            when={typed() === ''}
            fallback={
              <>
                <For each={beside().shown}>
                  {(kind, i) => (
                    <Control
                      does={!hot() && i() === 0 && kind.strong ? 'yes' : undefined}
                      label={readingShort[kind.slot] ?? readingNames[kind.slot]}
                      value={amount(kind)}
                      strong={kind.strong}
                      disabled={!props.house.holds}
                      fresh={kind.slot}
                      onPress={() => take(kind)}
                    />
                  )}
                </For>
                <Show when={beside().further}>
                  <Control label={words.rest} onPress={() => setRest(true)} />
                </Show>
              </>
            }
          >
            <For each={kindsAt(props.stage).first}>
              {(kind) => (
                <Pressable
                  class="reading-kind reading-now"
                  fresh={kind.id}
                  onPress={() => props.onTurn(kind.page)}
                >
                  {softWords(kind.label)}
                </Pressable>
              )}
            </For>
            <Control label={words.back} onPress={() => props.onTurn({ at: 'kinds' })} />
          </Show>
        </div>
        <div class="reading-ways">
          <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />
          <Control label={controls.readingsSoFar} onPress={() => props.onTurn({ at: 'past' })} />
        </div>
      </div>
    </Sheet>
  );
}
