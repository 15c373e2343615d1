import { createSignal, Show, type JSX } from 'solid-js';
import { withKind } from '../../../core/circle/label/wanting.ts';
import { withList, type Allergen, type Packed } from '../../../core/formula/allergens.ts';
import { allergenNames } from '../../../core/speech/words/allergens.ts';
import { labelPage as words } from '../../../core/speech/words/label.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showPart } from '../../../core/speech/show-part.ts';
import type { House } from '../../house.ts';
import { PacketFace } from '../../PacketFace.tsx';
import { CirclePage } from '../CirclePage.tsx';
import { TextFace } from '../../TextFace.tsx';
import { withAnswer, type Part } from './answer-packet.ts';

/** Letters of a fish's name. */
const KIND_LETTERS = 40;

/** The answer in its own bread; half changed ones too. */
async function keepAnswer(house: House, bread: string, part: Part): Promise<void> {
  for (const [id, draft] of Object.entries(house.drafts())) {
    const next = withAnswer(draft, part, id === bread);
    if (next) house.keepDraft(id, next);
  }
  const its = house.formulas().find(({ formula }) => formula?.id === bread)?.formula;
  const next = its && withAnswer(its, part, true);
  if (next) await house.keepFormula(next);
}

/** And in every other bread that has the same thing and no answer yet: nobody waits for it. */
async function keepElsewhere(house: House, bread: string, part: Part): Promise<void> {
  const latest = house.formulas().flatMap(({ formula }) => formula ?? []);
  for (const formula of latest.filter(({ id }) => id !== bread)) {
    const next = withAnswer(formula, part, false);
    if (next) await house.keepFormula(next);
  }
}

/** What the packet of one part of a bread names; `kind`: which fish it is. Kept as it is left. */
export function PacketAnswer(props: {
  readonly house: House;
  readonly bread: string;
  readonly part: Part;
  readonly kind: Allergen | null;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- it begins with it and goes its own way
  const [part, setPart] = createSignal(props.part);
  const change = (to: (of: Packed) => Packed): Part =>
    setPart((was) => ({ ...was, of: to(was.of) }) as Part);
  let isLeaving = false;
  const leave = async (house: House, bread: string): Promise<void> => {
    if (isLeaving) return;
    isLeaving = true;
    const answer = part();
    await keepAnswer(house, bread, answer);
    props.onBack();
    await keepElsewhere(house, bread, answer);
  };
  return (
    <Show
      when={props.kind}
      fallback={
        <PacketFace
          page={CirclePage}
          grid="circle-grid circle-top"
          name={part().of.name}
          of={part().of}
          grain={((now) => (now.kind === 'flour' ? now.of.grain : null))(part())}
          back={props.back}
          onChange={change}
          onBack={() => void leave(props.house, props.bread)}
        />
      }
    >
      {(kind) => (
        <TextFace
          page={CirclePage}
          ask={fill(words.kindAsk, { kinds: allergenNames[kind()] })}
          detail={fill(words.kindDetail, { name: showPart(part().of.name) })}
          begun=""
          lines="one"
          most={KIND_LETTERS}
          blank={false}
          back={props.back}
          onTake={(typed) => {
            change((of) => withList(of, withKind(of.allergens ?? [], kind(), typed)));
            void leave(props.house, props.bread);
          }}
          onBack={() => props.onBack()}
        />
      )}
    </Show>
  );
}
