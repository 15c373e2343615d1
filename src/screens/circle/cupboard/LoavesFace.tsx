import type { JSX } from 'solid-js';
import { LOAVES } from '../../../core/formula/make-recipe.ts';
import { costPage as words } from '../../../core/speech/words/cupboard.ts';
import { start } from '../../../core/speech/words/start.ts';
import { Stepper } from '../../../parts/Stepper.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CupboardPage } from './CupboardPage.tsx';

/** How many loaves of a bread are baked at once: the starter kept back is shared between them. */
export function LoavesFace(props: {
  readonly loaves: number;
  readonly back: string;
  readonly onChange: (loaves: number) => void;
  readonly onBack: () => void;
}): JSX.Element {
  return (
    <CupboardPage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.loavesAsk}>
          <Stepper
            label={words.loaves}
            value={props.loaves}
            least={LOAVES.least}
            most={LOAVES.most}
            fewer={start.fewer}
            more={start.more}
            onChange={(loaves) => props.onChange(loaves)}
          />
        </Words>
      }
    />
  );
}
