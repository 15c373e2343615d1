import { createSignal, type JSX } from 'solid-js';
import type { Formula } from '../../../core/formula/formula.ts';
import { LOAVES, makeRecipe } from '../../../core/formula/make-recipe.ts';
import { benchSheet as words, share } from '../../../core/speech/words/share.ts';
import { fill } from '../../../core/speech/fill.ts';
import { tellNotice } from '../../../core/speech/tell-notice.ts';
import { Control } from '../../../parts/Control.tsx';
import { printPage } from '../../../parts/print-page.ts';
import { Slab } from '../../../parts/Slab.tsx';
import { Stepper } from '../../../parts/Stepper.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { BookPage } from '../BookPage.tsx';
import { BenchSheet } from './BenchSheet.tsx';
import { benchView } from './sheet-view.ts';

/** How many loaves, and the sheet for the bench is printed. */
export function PrintFace(props: {
  readonly house: House;
  readonly formula: Formula;
  readonly onBack: () => void;
}): JSX.Element {
  const [loaves, setLoaves] = createSignal(2);
  const made = () =>
    makeRecipe(props.formula, {
      loaves: loaves(),
      piece: props.formula.piece,
      scale: props.house.equipment().scale,
    });
  const view = () => {
    const { recipe } = made();
    const now = props.house.now();
    const time = `${props.house.date(now)} ${props.house.hour(now)}`;
    return recipe ? benchView(recipe, props.house.ways(), time, props.house.equipment()) : null;
  };
  const then = (): string => {
    const count = view()?.pages.length ?? 1;
    return count === 1 ? words.then : fill(words.thenMany, { count });
  };
  const why = (): string | undefined => {
    const { reason } = made();
    return reason ? tellNotice(reason, props.house.ways()) : undefined;
  };
  return (
    <BookPage
      back={share.title}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={words.loaves}
          detail={why() ?? [view()?.of, view()?.bowls].filter(Boolean).join('. ')}
        >
          <Stepper
            label={words.loaves}
            value={loaves()}
            least={LOAVES.least}
            most={LOAVES.most}
            fewer={words.fewer}
            more={words.more}
            onChange={setLoaves}
          />
        </Words>
      }
      slab={
        <Slab
          label={words.print}
          then={then()}
          fresh={words.print}
          disabled={view() === null}
          onPress={() => {
            const sheet = view();
            if (sheet) printPage(() => <BenchSheet view={sheet} />);
          }}
        />
      }
      controls={<Control label={share.title} onPress={() => props.onBack()} />}
    />
  );
}
