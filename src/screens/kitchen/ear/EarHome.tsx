import type { JSX } from 'solid-js';
import { earKitchen as words, earPeople } from '../../../core/speech/words/ear-kitchen.ts';
import { kitchenFields } from '../../../core/speech/words/kitchen-fields.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import type { EarFaceProps } from './face.ts';

/** Whether it listens, and the ways to all else of it. */
export function EarHome(props: EarFaceProps): JSX.Element {
  const ear = () => props.house.equipment().ear;
  const count = () => props.ear.people().length;
  const detail = (): string => {
    if (ear() === 'off') return words.offDetail;
    return count() === 0 ? words.nobodyDetail : words.onDetail;
  };
  return (
    <KitchenPage
      back={kitchenFields.tablet}
      onBack={() => props.onBack()}
      words={
        <Words headline={words.title} detail={detail()} care={words.care}>
          <div class="kitchen-grid">
            <Control
              label={words.engine}
              value={words.is[ear()]}
              onPress={() => props.onOpen({ at: 'engine' })}
            />
            <Control
              label={earPeople.title}
              value={count() === 0 ? earPeople.nobody : fill(earPeople.count, { count: count() })}
              onPress={() => props.onOpen({ at: 'people' })}
            />
            <Control label={words.expect} onPress={() => props.onOpen({ at: 'expect' })} />
            <Control label={words.erase} onPress={() => props.onOpen({ at: 'eraseAll' })} />
          </div>
        </Words>
      }
    />
  );
}
