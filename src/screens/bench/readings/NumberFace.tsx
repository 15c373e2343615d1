import { createEffect, on, Show, type JSX } from 'solid-js';
import { stageOf } from '../../../../machines/kitchen/stage-of.ts';
import type { Reading } from '../../../core/records/fact.ts';
import { readingOf } from '../../../core/records/reading-slot.ts';
import { bench } from '../../../core/speech/en/bench.ts';
import { controls, keypad } from '../../../core/speech/en/controls.ts';
import { reading as words, readingList, readingNames } from '../../../core/speech/en/readings.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showNumber } from '../../../core/speech/numbers.ts';
import { keysFor, showAmount } from '../../../core/speech/reading-text.ts';
import { Control } from '../../../parts/Control.tsx';
import { NumberPad } from '../../../parts/NumberPad.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { numberPage, type NumberPage, type ReadingPage } from './page.ts';
import { record } from './record.ts';

interface Keyed {
  readonly house: House;
  readonly bake: string;
  readonly page: NumberPage;
  readonly onTurn: (page: ReadingPage | null) => void;
}

const usualOf = (house: House, { slot }: NumberPage) => keysFor(slot, 'usual', house.ways());

const isWithin = (typed: number, { least, most }: { least: number; most: number }): boolean =>
  typed >= least && typed <= most;

/** How plausible what is typed is, in the baker's unit; null while nothing is. */
const judged = (house: House, page: NumberPage): 'usual' | 'odd' | 'impossible' | null => {
  if (page.typed === null) return null;
  if (isWithin(page.typed, usualOf(house, page))) return 'usual';
  const possible = keysFor(page.slot, 'possible', house.ways());
  return isWithin(page.typed, possible) ? 'odd' : 'impossible';
};

/** A number that is usual in the other scale was most likely read off such a probe. */
const otherScale = (house: House, { slot, typed }: NumberPage): string | null => {
  const { heat, ...units } = house.ways();
  const other = keysFor(slot, 'usual', { ...units, heat: heat === 'C' ? 'F' : 'C' });
  const mine = keysFor(slot, 'usual', { ...units, heat });
  return typed !== null && other.unit !== mine.unit && isWithin(typed, other) ? other.unit : null;
};

/** Why it was not taken at once, in words; null where it may be. */
const doubtOf = (house: House, page: NumberPage): string | null => {
  const how = judged(house, page);
  if (page.typed === null || how === null || how === 'usual') return null;
  const usual = usualOf(house, page);
  const got = `${showNumber(page.typed)} ${usual.unit}`;
  const unit = otherScale(house, page);
  if (unit !== null) return fill(words.otherScale, { got, unit });
  return how === 'odd'
    ? fill(words.odd, { got, range: usual.range })
    : fill(words.impossible, { got, range: keysFor(page.slot, 'possible', house.ways()).range });
};

/** At a hot oven the probe is read with the rack out. */
const isHot = (house: House, { slot }: NumberPage): boolean =>
  slot === 'coreTemperature' && stageOf(house.kitchen().oven) !== 'off';

const hintOf = (house: House, page: NumberPage): string => {
  const { range } = usualOf(house, page);
  const { mends, slot, spots } = page;
  if (mends) {
    return fill(readingList.correctHint, { name: readingNames[slot], time: mends.time, range });
  }
  if (spots.length > 0) {
    return fill(words.spots, {
      got: spots.map((n) => showAmount(slot, n, house.ways())).join(', '),
    });
  }
  return isHot(house, page) ? words.hot : fill(words.usual, { range });
};

export function NumberWords(props: Keyed): JSX.Element {
  // What is to be heeded is said as well: at the oven the eyes are elsewhere.
  createEffect(
    on(
      () => props.page.slot,
      () => isHot(props.house, props.page) && props.house.say(words.hot),
    ),
  );
  const possible = () => keysFor(props.page.slot, 'possible', props.house.ways());
  const headline = (): string =>
    props.page.mends
      ? fill(readingList.correct, { got: props.page.mends.says })
      : readingNames[props.page.slot];
  const hint = (): string =>
    (props.page.asked ? doubtOf(props.house, props.page) : null) ?? hintOf(props.house, props.page);
  return (
    <Words headline={headline()}>
      {/* Another spot is another number: the pad begins anew, blank. */}
      <Show when={`${props.bake} ${props.page.slot} ${props.page.spots.length}`} keyed>
        <NumberPad
          label={headline()}
          unit={possible().unit}
          words={{ point: bench.point, clear: keypad.clear, hint: hint() }}
          possible={possible().most}
          begun={props.page.typed}
          onTyped={(typed) => props.onTurn({ ...props.page, typed, asked: false })}
        />
      </Show>
    </Words>
  );
}

/** The reading that the page stands for, once it may be taken; else says what is the matter. */
const settled = (props: Keyed): Reading | null => {
  const { page } = props;
  if (page.typed === null) return null;
  const how = judged(props.house, page);
  if (how === 'impossible' || (how === 'odd' && !page.asked)) {
    props.house.say(doubtOf(props.house, page) ?? '');
    props.onTurn({ ...page, asked: true });
    return null;
  }
  return {
    ...readingOf(page.slot, usualOf(props.house, page).record(page.typed)),
    ...(how === 'odd' ? { odd: true } : {}),
  };
};

export function NumberSlab(props: Keyed): JSX.Element {
  const typed = (): string => {
    const number = usualOf(props.house, props.page).record(props.page.typed ?? 0);
    return showAmount(props.page.slot, number, props.house.ways());
  };
  const refused = (): boolean =>
    props.page.asked && judged(props.house, props.page) === 'impossible';
  const keeps = (): boolean => props.page.asked && judged(props.house, props.page) === 'odd';
  const then = (): string => {
    if (props.page.typed === null) return bench.key;
    if (refused()) return words.change;
    return keeps() ? fill(words.keepOdd, { got: typed() }) : typed();
  };
  const press = (): void => {
    const reading = settled(props);
    if (reading) void record(props, reading).then(() => props.onTurn(null));
  };
  return (
    <Slab
      label={keeps() ? words.keep : bench.thatsIt}
      then={then()}
      fresh={`number ${props.bake} ${props.page.asked} ${props.page.spots.length}`}
      disabled={props.page.typed === null || refused()}
      onPress={press}
    />
  );
}

export function NumberControls(props: Keyed): JSX.Element {
  const more = (): void => {
    const { slot, typed, spots } = props.page;
    const reading = settled(props);
    if (reading === null || typed === null) return;
    const spot = usualOf(props.house, props.page).record(typed);
    void record(props, reading).then(() =>
      props.onTurn({ ...numberPage(slot), spots: [...spots, spot] }),
    );
  };
  return (
    <>
      <Control label={controls.backToBench} onPress={() => props.onTurn(null)} />
      <Control
        label={props.page.mends ? controls.readingsSoFar : words.back}
        onPress={() => props.onTurn({ at: props.page.mends ? 'past' : 'kinds' })}
      />
      <Show when={props.page.slot === 'coreTemperature' && !props.page.mends}>
        <Control label={words.spot} disabled={props.page.typed === null} onPress={more} />
      </Show>
    </>
  );
}
