import { For, Show, type JSX } from 'solid-js';
import { LOAVES } from '../../core/formula/make-recipe.ts';
import { bench } from '../../core/speech/en/bench.ts';
import { keypad } from '../../core/speech/en/controls.ts';
import { JOINS, type Join } from '../../core/records/stage.ts';
import { joins, start } from '../../core/speech/en/start.ts';
import { fill } from '../../core/speech/fill.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import { NumberPad } from '../../parts/NumberPad.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { FormulaFound } from '../house.ts';
import { KITCHEN } from './draft.ts';

export function FormulaFace(props: {
  readonly formulas: readonly FormulaFound[];
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
                {broken().file}: {'reason' in broken() ? tellNotice(reasonOf(broken())) : ''}
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
    </Words>
  );
}

export function KitchenFace(props: {
  readonly last: number | null;
  readonly onTyped: (celsius: number | null) => void;
}): JSX.Element {
  return (
    <Words headline={keypad.kitchenTemperature}>
      <NumberPad
        label={keypad.kitchenTemperature}
        unit="°C"
        words={{
          point: bench.point,
          clear: keypad.clear,
          hint:
            props.last === null
              ? fill(bench.doughRange, KITCHEN)
              : fill(start.kitchenLast, { celsius: props.last }),
          outside: fill(bench.only, KITCHEN),
        }}
        min={KITCHEN.least}
        max={KITCHEN.most}
        onTyped={(value) => props.onTyped(value)}
      />
    </Words>
  );
}

export function WhereFace(props: {
  readonly chosen: Join;
  readonly onPick: (from: Join) => void;
}): JSX.Element {
  return (
    <Words headline={start.where} detail={start.whereDetail}>
      <Tiles
        label={start.where}
        options={JOINS.map((join) => ({ value: join, label: joins[join] }))}
        chosen={props.chosen}
        onChoose={(join) => props.onPick(join as Join)}
      />
    </Words>
  );
}
