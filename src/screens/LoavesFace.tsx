import type { JSX } from 'solid-js';
import { LOAVES } from '../core/formula/make-recipe.ts';
import { start } from '../core/speech/words/start.ts';
import { Stepper } from '../parts/Stepper.tsx';
import { Words } from '../parts/Words.tsx';

/** How many loaves: one more or one fewer a press. */
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
