import { For, Show, type JSX } from 'solid-js';
import { LOAVES } from '../../core/formula/make-recipe.ts';
import { bench } from '../../core/speech/en/bench.ts';
import { keypad } from '../../core/speech/en/controls.ts';
import type { Join } from '../../core/records/stage.ts';
import { joins, start } from '../../core/speech/en/start.ts';
import { shown } from '../../core/speech/facts.ts';
import { fill } from '../../core/speech/fill.ts';
import { keyedHeat } from '../../core/speech/keyed.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import type { Half } from '../../parts/half.ts';
import { NumberPad } from '../../parts/NumberPad.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { Units } from '../../core/units.ts';
import type { FormulaFound } from '../house.ts';
import { KITCHEN } from '../kitchen-range.ts';

export function FormulaFace(props: {
  readonly formulas: readonly FormulaFound[];
  readonly units: Units;
  readonly onPick: (id: string) => void;
}): JSX.Element {
  return (
    <Words headline={start.formula}>
      <Tiles
        label={start.formula}
        options={props.formulas.flatMap(({ formula }) =>
          formula ? [{ value: formula.id, label: formula.name }] : [],
        )}
        onChoose={(id) => props.onPick(id)}
      />
      <For each={props.formulas}>
        {(found) => (
          <Show when={found.formula === null && found}>
            {(broken) => (
              <p class="act-detail start-broken">
                {broken().file}:{' '}
                {'reason' in broken() ? tellNotice(reasonOf(broken()), props.units) : ''}
              </p>
            )}
          </Show>
        )}
      </For>
    </Words>
  );
}

const reasonOf = (found: FormulaFound) =>
  found.formula === null ? found.reason : { key: 'formulaUnreadable', values: {} };

export function LoavesFace(props: {
  readonly loaves: number;
  readonly onChange: (loaves: number) => void;
  readonly children?: JSX.Element;
}): JSX.Element {
  return (
    <Words headline={start.loaves}>
      <Stepper
        label={start.loaves}
        value={props.loaves}
        least={LOAVES.least}
        most={LOAVES.most}
        fewer={start.fewer}
        more={start.more}
        onChange={(n) => props.onChange(n)}
      />
      {props.children}
    </Words>
  );
}

export function KitchenFace(props: {
  readonly last: number | null;
  readonly units: Units;
  readonly half: Half;
  readonly onTyped: (celsius: number | null) => void;
}): JSX.Element {
  const keyed = () => keyedHeat(KITCHEN, props.units);
  const label = (): string => fill(keypad.kitchenTemperature, { unit: keyed().unit });
  return (
    <Words headline={label()}>
      <NumberPad
        label={label()}
        unit={keyed().unit}
        words={{
          point: bench.point,
          clear: keypad.clear,
          hint:
            props.last === null
              ? fill(bench.usual, { range: keyed().range })
              : fill(start.kitchenLast, shown({ celsius: props.last }, props.units)),
          outside: fill(bench.only, { range: keyed().range }),
          again: keypad.again,
        }}
        half={props.half}
        min={keyed().least}
        max={keyed().most}
        onTyped={(typed) => props.onTyped(typed === null ? null : keyed().record(typed))}
      />
    </Words>
  );
}

export function WhereFace(props: {
  readonly joins: readonly Join[];
  readonly chosen: Join;
  readonly onPick: (from: Join) => void;
}): JSX.Element {
  return (
    <Words headline={start.where} detail={start.whereDetail}>
      <Tiles
        label={start.where}
        options={props.joins.map((join) => ({ value: join, label: joins[join] }))}
        chosen={props.chosen}
        onChoose={(join) => props.onPick(join as Join)}
      />
    </Words>
  );
}
