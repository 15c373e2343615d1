import { For, type JSX } from 'solid-js';
import { packetState } from '../../../core/formula/allergens.ts';
import type { Formula } from '../../../core/formula/formula.ts';
import { allergenPage } from '../../../core/speech/words/allergens.ts';
import { labelPage as words, wanting as asked } from '../../../core/speech/words/label.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { showPart } from '../../../core/speech/show-part.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { CirclePage } from '../CirclePage.tsx';
import type { LookUp } from '../../../core/circle/label/ingredients.ts';
import type { Part } from './answer-packet.ts';

/** Every flour and filling of a bread: what its packet names, and what it is made of. */
export function PartsFace(props: {
  readonly formula: Formula;
  readonly lookUp: LookUp;
  readonly onPacket: (part: Part) => void;
  readonly onMadeOf: (part: Part) => void;
  readonly onBack: () => void;
}): JSX.Element {
  const parts = (): readonly Part[] => [
    ...props.formula.flours.map((of) => ({ kind: 'flour', of }) as const),
    ...props.formula.fillings.map((of) => ({ kind: 'filling', of }) as const),
  ];
  const packet = ({ kind, of }: Part): string => {
    const state = packetState(of);
    return allergenPage.states[kind === 'flour' && state === 'none' ? 'read' : state];
  };
  const madeOf = ({ of }: Part): string => {
    const known = props.lookUp(of.name)?.madeOf ?? null;
    if (known === null) return asked.madeOf;
    return known.length === 0 ? words.justItself : fill(words.madeOf, { kinds: known.join(', ') });
  };
  return (
    <CirclePage
      wide
      back={showBread(props.formula.name)}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.answers} detail={words.answersDetail}>
          <div class="circle-grid circle-top">
            <For each={parts()}>
              {(part) => (
                <>
                  <Control
                    label={showPart(part.of.name)}
                    value={packet(part)}
                    fresh={`packet ${part.of.id}`}
                    onPress={() => props.onPacket(part)}
                  />
                  <Control
                    label={showPart(part.of.name)}
                    value={madeOf(part)}
                    fresh={`madeOf ${part.of.id}`}
                    onPress={() => props.onMadeOf(part)}
                  />
                </>
              )}
            </For>
          </div>
        </Words>
      }
    />
  );
}
