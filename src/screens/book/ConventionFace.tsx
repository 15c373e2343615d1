import type { JSX } from 'solid-js';
import type { Convention } from '../../core/formula/formula.ts';
import { conventions } from '../../core/speech/words/book.ts';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import { BookPage } from './BookPage.tsx';

/** Which way percent is counted: asked once of each formula, kept with it, and told on its page. */
export function ConventionFace(props: {
  readonly chosen: Convention | undefined;
  readonly back: string;
  readonly onChoose: (convention: Convention) => void;
  readonly onBack: () => void;
}): JSX.Element {
  return (
    <BookPage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words headline={conventions.ask} detail={conventions.detail}>
          <Tiles
            label={conventions.ask}
            chosen={props.chosen ?? ''}
            options={[
              { value: 'whole', label: conventions.whole, means: conventions.wholeMeans },
              { value: 'bowl', label: conventions.bowl, means: conventions.bowlMeans },
            ]}
            onChoose={(value) => props.onChoose(value as Convention)}
          />
        </Words>
      }
    />
  );
}
