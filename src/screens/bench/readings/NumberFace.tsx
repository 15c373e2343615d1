import { createEffect, createSignal, on, Show, type JSX } from 'solid-js';
import type { Reading } from '../../../core/records/fact.ts';
import { bench } from '../../../core/speech/words/bench.ts';
import { controls, keypad } from '../../../core/speech/words/controls.ts';
import {
  reading as words,
  readingList,
  readingNames,
} from '../../../core/speech/words/readings.ts';
import { fill } from '../../../core/speech/fill.ts';
import { keysFor, showAmount } from '../../../core/speech/reading-text.ts';
import { KILOGRAMS } from '../../../core/speech/weights.ts';
import { Control } from '../../../parts/Control.tsx';
import { NumberPad } from '../../../parts/NumberPad.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { numberOf } from '../../../parts/typed.ts';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { isHot } from './hot.ts';
import { doubtOf, judged, readingFrom } from './judge-number.ts';
import { weightAs } from './number-kinds.ts';
import { numberPage, type NumberPage, type ReadingPage } from './page.ts';
import { record } from './record.ts';

interface Keyed {
  readonly house: House;
  readonly bake: string;
  readonly page: NumberPage;
  /** The act it was begun at: a half-typed number is this one's alone. */
  readonly act: string;
  readonly onTurn: (page: ReadingPage | null) => void;
}

const usualOf = (house: House, { slot }: NumberPage) => keysFor(slot, 'usual', house.ways());

const hintOf = (house: House, page: NumberPage): string => {
  const { range } = usualOf(house, page);
  const { mends, slot, spots } = page;
  if (mends) {
    return fill(readingList.correctHint, { time: mends.time, range });
  }
  if (spots.length > 0) {
    return fill(words.spots, {
      got: spots.map((n) => showAmount(slot, n, house.ways())).join(', '),
    });
  }
  return isHot(house.kitchen(), slot) ? words.hot : fill(words.usual, { range });
};

/** A reading that one press takes back again, away from the oven, may be said. */
const isSaid = ({ house, page }: Keyed): boolean =>
  page.mends === null && page.slot !== 'wantedDough' && !isHot(house.kitchen(), page.slot);

/** What is asked: a number left half typed is shown again here, and at no other question. */
const questionOf = ({ bake, act, page }: Keyed): string =>
  `${bake} ${act} ${page.slot} ${page.spots.length} ${page.mends?.target ?? ''}`;

export function NumberWords(props: Keyed): JSX.Element {
  // What is to be heeded is said as well: at the oven the eyes are elsewhere.
  createEffect(
    on(
      () => props.page.slot,
      () => isHot(props.house.kitchen(), props.page.slot) && props.house.say(words.hot),
    ),
  );
  const possible = () => keysFor(props.page.slot, 'possible', props.house.ways());
  const [text, setText] = createSignal('');
  const typed = (): number | null => {
    const read = numberOf(text());
    return possible().unit === 'g' ? weightAs(text(), props.page.slot, props.house.ways()) : read;
  };
  const unit = (): string => (typed() === numberOf(text()) ? possible().unit : KILOGRAMS);
  const headline = (): string =>
    props.page.mends
      ? fill(readingList.correct, { got: props.page.mends.says })
      : readingNames[props.page.slot];
  const hint = (): string =>
    (props.page.asked ? doubtOf(props.page, props.house.ways()) : null) ??
    hintOf(props.house, props.page);
  return (
    <Words headline={headline()}>
      {/* Another spot is another number: the pad begins anew, blank. */}
      <Show when={questionOf(props)} keyed>
        {(question) => (
          <NumberPad
            label={headline()}
            unit={unit()}
            words={{
              point: bench.point,
              clear: keypad.clear,
              hint: hint(),
              again: props.page.asked ? undefined : keypad.again,
            }}
            possible={possible().most}
            said={isSaid(props)}
            begun={props.page.typed}
            half={props.house.half(question)}
            onText={(keys) => {
              setText(keys);
              props.onTurn({ ...props.page, typed: typed(), asked: false });
            }}
          />
        )}
      </Show>
    </Words>
  );
}

/** The reading that the page stands for, once it may be taken; else says what is the matter. */
const settled = (props: Keyed): Reading | null => {
  const { page, house } = props;
  const reading = readingFrom(page, page.asked, house.ways());
  if (reading === null && page.typed !== null) {
    house.say(doubtOf(page, house.ways()) ?? '');
    props.onTurn({ ...page, asked: true });
  }
  return reading?.what === 'rise' && page.jar ? { ...reading, in: 'jar' } : reading;
};

export function NumberSlab(props: Keyed): JSX.Element {
  const typed = (): string => {
    const number = usualOf(props.house, props.page).record(props.page.typed ?? 0);
    return showAmount(props.page.slot, number, props.house.ways());
  };
  const refused = (): boolean =>
    props.page.asked && judged(props.page, props.house.ways()) === 'impossible';
  const keeps = (): boolean => props.page.asked && judged(props.page, props.house.ways()) === 'odd';
  const then = (): string => {
    if (props.page.typed === null) return bench.key;
    if (refused()) return words.change;
    return keeps() ? fill(words.keepOdd, { got: typed() }) : typed();
  };
  const press = (): void => {
    const reading = settled(props);
    if (reading === null) return;
    props.house.half(questionOf(props)).keep('');
    void record(props, reading).then(() => props.onTurn(null));
  };
  return (
    <Slab
      label={keeps() ? words.keep : bench.thatsIt}
      then={then()}
      fresh={`number ${props.bake} ${props.page.asked} ${props.page.spots.length}`}
      disabled={props.page.typed === null || refused()}
      does={isSaid(props) ? 'yes' : undefined}
      onPress={press}
    />
  );
}

export function NumberControls(props: Keyed): JSX.Element {
  const more = (): void => {
    const { slot, typed, spots } = props.page;
    const reading = settled(props);
    if (reading === null || typed === null) return;
    props.house.half(questionOf(props)).keep('');
    const spot = usualOf(props.house, props.page).record(typed);
    void record(props, reading).then(() =>
      props.onTurn({ ...numberPage(slot), spots: [...spots, spot] }),
    );
  };
  /** It is no reading: it was asked for on the water's page. */
  const wanted = (): boolean => props.page.slot === 'wantedDough';
  return (
    <>
      <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />
      <Control
        label={props.page.mends ? controls.readingsSoFar : wanted() ? controls.whyThis : words.back}
        onPress={() => props.onTurn({ at: props.page.mends ? 'past' : wanted() ? 'why' : 'kinds' })}
      />
      <Show when={props.page.slot === 'coreTemperature' && !props.page.mends}>
        <Control label={words.spot} disabled={props.page.typed === null} onPress={more} />
      </Show>
    </>
  );
}
