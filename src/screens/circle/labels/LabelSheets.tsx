import { For, type JSX } from 'solid-js';
import type { Label } from '../../../core/circle/label/label.ts';
import { ROLL_RIM, type Fit, type LabelPage } from './fit.ts';
import { LabelCard } from './LabelCard.tsx';
import './LabelSheets.css';

/** A label and how it stands on its paper. */
export interface FittedLabel {
  readonly label: Label;
  readonly fit: Fit;
}

/** The page of LabelSheets.css that it stands on. */
const pageOf = ({ paper, height }: Fit): string =>
  paper === 'roll' ? `roll-${height + ROLL_RIM}` : paper;

/** Labels on paper: the screen does not show them. A page a section. */
export function LabelSheets(props: {
  readonly pages: readonly LabelPage<FittedLabel>[];
}): JSX.Element {
  return (
    <For each={props.pages}>
      {({ fit, labels }) => (
        <section
          class="label-sheet"
          data-page={pageOf(fit)}
          style={{ '--columns': fit.columns, '--width': fit.width, '--height': fit.height }}
        >
          <For each={labels}>
            {(each) => (
              <div class="label-place" style={{ '--em': each.fit.em }}>
                <LabelCard label={each.label} />
              </div>
            )}
          </For>
        </section>
      )}
    </For>
  );
}
