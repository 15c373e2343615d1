import { For, Show, type JSX } from 'solid-js';
import type { Join } from '../../core/records/stage.ts';
import { joins, start } from '../../core/speech/words/start.ts';
import { tellNotice } from '../../core/speech/tell-notice.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { Units } from '../../core/units.ts';
import type { FormulaFound } from '../house.ts';

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
          formula ? [{ value: formula.id, label: showBread(formula.name) }] : [],
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
