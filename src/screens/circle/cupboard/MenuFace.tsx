import type { JSX } from 'solid-js';
import { circle } from '../../../core/speech/words/circle.ts';
import { cupboard } from '../../../core/speech/words/cupboard.ts';
import { Tiles } from '../../../parts/Tiles.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CupboardPage } from './CupboardPage.tsx';

export type CupboardPart = 'list' | 'shopping' | 'costs';

/** The store cupboard as it opens: what is there, what is to be bought, what a loaf costs. */
export function MenuFace(props: {
  readonly onOpen: (part: CupboardPart) => void;
  readonly onBack: () => void;
}): JSX.Element {
  return (
    <CupboardPage
      wide
      back={circle.title}
      onBack={() => props.onBack()}
      words={
        <Words headline={cupboard.title}>
          <Tiles
            label={cupboard.title}
            options={[
              { value: 'list', label: cupboard.list, means: cupboard.listMeans },
              { value: 'shopping', label: cupboard.shopping, means: cupboard.shoppingMeans },
              { value: 'costs', label: cupboard.costs, means: cupboard.costsMeans },
            ]}
            onChoose={(part) => props.onOpen(part as CupboardPart)}
          />
        </Words>
      }
    />
  );
}
