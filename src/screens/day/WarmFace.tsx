import { createSignal, Show, type JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { askPage } from '../../core/speech/words/day.ts';
import { start } from '../../core/speech/words/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { showHeat } from '../../core/speech/heats.ts';
import type { Celsius } from '../../core/units.ts';
import { Control } from '../../parts/Control.tsx';
import { Slab } from '../../parts/Slab.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenFace } from '../KitchenFace.tsx';
import { DayPage } from './DayPage.tsx';

/** Kitchens as they are, °C: near enough for a plan. Judgement. */
const WARMTHS: readonly Celsius[] = [16, 18, 20, 22, 24, 27];

/** How warm the kitchen will be: a tile is near enough, a number may be keyed in. */
export function WarmFace(props: {
  readonly house: House;
  readonly onPick: (celsius: Celsius) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const [keys, setKeys] = createSignal(false);
  let typed: Celsius | null = null;
  const units = () => props.house.ways();
  const detail = (): string => {
    const last = props.house.lastKitchen();
    return last === null
      ? askPage.warmDetail
      : fill(start.kitchenLast, shown({ celsius: last }, units()));
  };
  const done = (): void => {
    if (typed === null) props.onBack();
    else props.onPick(typed);
  };
  return (
    <DayPage
      caption={props.house.caption()}
      words={
        <Show
          when={keys()}
          fallback={
            <Words headline={start.kitchen} detail={detail()}>
              <Tiles
                label={start.kitchen}
                options={WARMTHS.map((celsius) => ({
                  value: String(celsius),
                  label: showHeat(celsius, units()),
                }))}
                onChoose={(value) => props.onPick(Number(value))}
              />
            </Words>
          }
        >
          <KitchenFace
            last={props.house.lastKitchen()}
            units={units()}
            half={props.house.half('how warm is the kitchen, for a plan')}
            onTyped={(celsius) => (typed = celsius)}
          />
        </Show>
      }
      slab={<Slab label={bench.thatsIt} then={askPage.title} fresh={keys()} onPress={done} />}
      controls={
        <Show when={!keys()}>
          <Control label={askPage.keyIn} onPress={() => setKeys(true)} />
        </Show>
      }
    />
  );
}
