import { createMemo, createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import type { DayKey } from '../../../core/circle/day-key.ts';
import type { Wanting } from '../../../core/circle/label/wanting.ts';
import type { Allergen } from '../../../core/formula/allergens.ts';
import { labelPage as words } from '../../../core/speech/words/label.ts';
import { carePage } from '../../../core/speech/words/care-page.ts';
import { showDay } from '../../../core/speech/show-day.ts';
import { Tiles } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { HouseCircle } from '../../house-circle.ts';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';
import { partAt, type Part } from './answer-packet.ts';
import { LabelWaysFace } from './LabelWaysFace.tsx';
import { createLabels, type LabelsFor } from './labels.ts';
import { MadeOfFace } from './MadeOfFace.tsx';
import { PacketAnswer } from './PacketAnswer.tsx';
import { PartsFace } from './PartsFace.tsx';
import { PrintFace } from './PrintFace.tsx';
import { daysShown, RowFace } from './RowFace.tsx';
import type { LabelRow } from './rows.ts';
import { WhichFace } from './WhichFace.tsx';

type At =
  | { readonly at: 'print' | 'ways' }
  | { readonly at: 'row' | 'parts' | 'days'; readonly row: LabelRow }
  | { readonly at: 'made of'; readonly row: LabelRow; readonly part: Part }
  | {
      readonly at: 'packet';
      readonly row: LabelRow;
      readonly part: Part;
      readonly kind: Allergen | null;
    };

/** Days that a loaf kept cold may be eaten within: none is chosen beforehand. */
const DAYS = [1, 2, 3, 4, 5, 6] as const;

/** The labels of one bake. */
function LabelsOf(props: {
  readonly house: House;
  readonly circle: HouseCircle;
  readonly of: LabelsFor;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- house and circle are one each
  const labels = createLabels(props.house, props.circle, () => props.of);
  const [path, setPath] = createSignal<readonly At[]>([]);
  const on = (at: At): void => void setPath([...path(), at]);
  const back = (): void => void setPath(path().slice(0, -1));
  const now = (): At => path().at(-1) ?? { at: 'print' };
  const at = <A extends At['at']>(which: A): Extract<At, { readonly at: A }> | null => {
    const here = now();
    return here.at === which ? (here as Extract<At, { readonly at: A }>) : null;
  };
  const rowAt = (which: 'row' | 'parts' | 'days'): LabelRow | null => {
    const here = now();
    return here.at === which ? here.row : null;
  };
  const answer = (row: LabelRow, { key, of, values }: Wanting): void => {
    if (key === 'eatWithin') return on({ at: 'days', row });
    const formula = labels.formula(row.bread);
    const part = formula && of && partAt(formula, of);
    if (!part) return;
    if (key === 'madeOf') return on({ at: 'made of', row, part });
    const kind = key === 'kind' ? (values['allergen'] as Allergen) : null;
    on({ at: 'packet', row, part, kind });
  };
  return (
    <Switch
      fallback={
        <PrintFace
          house={props.house}
          circle={props.circle}
          labels={labels}
          back={props.back}
          onRow={(row) => on({ at: 'row', row })}
          onWays={() => on({ at: 'ways' })}
          onBack={() => props.onBack()}
        />
      }
    >
      <Match when={at('ways')}>
        <LabelWaysFace house={props.house} circle={props.circle} onBack={back} />
      </Match>
      <Match when={rowAt('row')} keyed>
        {(row) => (
          <RowFace
            labels={labels}
            row={row}
            onAnswer={(wanting) => answer(row, wanting)}
            onParts={() => on({ at: 'parts', row })}
            onBack={back}
          />
        )}
      </Match>
      <Match when={rowAt('parts')} keyed>
        {(row) => (
          <Show when={labels.formula(row.bread)}>
            {(formula) => (
              <PartsFace
                formula={formula()}
                lookUp={labels.lookUp}
                onPacket={(part) => on({ at: 'packet', row, part, kind: null })}
                onMadeOf={(part) => on({ at: 'made of', row, part })}
                onBack={back}
              />
            )}
          </Show>
        )}
      </Match>
      <Match when={at('made of')} keyed>
        {({ part }) => (
          <MadeOfFace
            house={props.house}
            circle={props.circle}
            name={part.of.name}
            back={words.title}
            onBack={back}
          />
        )}
      </Match>
      <Match when={at('packet')} keyed>
        {({ row, part, kind }) => (
          <PacketAnswer
            house={props.house}
            bread={row.bread}
            part={part}
            kind={kind}
            back={words.title}
            onBack={back}
          />
        )}
      </Match>
      <Match when={rowAt('days')} keyed>
        {(row) => (
          <CirclePage
            back={words.title}
            onBack={back}
            words={
              <Words
                headline={words.daysAsk}
                detail={words.daysDetail}
                care={carePage.parts[3].lines[4]}
              >
                <Tiles
                  label={words.daysAsk}
                  chosen={labels.days(row.bread)?.toString()}
                  options={DAYS.map((days) => ({
                    value: String(days),
                    label: daysShown(days),
                  }))}
                  onChoose={(days) => {
                    labels.setDays(row.bread, Number(days));
                    back();
                  }}
                />
              </Words>
            }
          />
        )}
      </Match>
    </Switch>
  );
}

/** Labels: of which bake, then each kind of loaf, then on paper. */
export default function Labels(props: {
  readonly house: House;
  readonly circle: HouseCircle;
  /** Come to from a day's own page; null: it is asked. */
  readonly day: DayKey | null;
  readonly onBack: () => void;
}): JSX.Element {
  const [chosen, setOf] = createSignal<LabelsFor | null>(null);
  const of = createMemo((): LabelsFor | null =>
    props.day === null ? chosen() : { day: props.day },
  );
  return (
    <Show
      when={of()}
      keyed
      fallback={
        <WhichFace
          house={props.house}
          circle={props.circle}
          onChoose={setOf}
          onBack={() => props.onBack()}
        />
      }
    >
      {(which) => (
        <LabelsOf
          house={props.house}
          circle={props.circle}
          of={which}
          back={props.day === null ? words.title : showDay(props.day)}
          onBack={() => (props.day === null ? setOf(null) : props.onBack())}
        />
      )}
    </Show>
  );
}
