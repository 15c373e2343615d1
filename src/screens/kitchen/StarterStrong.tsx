import { createSignal, Show, type JSX } from 'solid-js';
import { TOPS, type StarterDeed } from '../../core/records/starter.ts';
import { starterWords as words } from '../../core/speech/words/starter.ts';
import { Control } from '../../parts/Control.tsx';
import { Tiles } from '../../parts/Tiles.tsx';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { KitchenPage } from '../KitchenPage.tsx';
import { starterName } from '../starter-view.ts';
import { strengthView } from '../strength-view.ts';
import { keyedIn } from './field.ts';
import { NumberPage } from './FieldsPage.tsx';

/** A jar that has risen further has run over. Judgement. */
const RISE = { least: 0, most: 300 } as const;

/** Is it strong enough to bake: what is seen, told at two times, and the answer with how sure it is. */
export function StarterStrong(props: {
  readonly house: House;
  readonly onBack: () => void;
}): JSX.Element {
  const [keys, setKeys] = createSignal(false);
  const view = () =>
    strengthView(props.house.kitchen(), props.house.now(), (at) => props.house.hour(at));
  const tend = (deed: StarterDeed): void => {
    void props.house.take({ kind: 'starter', ...deed }).then(() => props.house.say(view().spoken));
  };
  const see = (value: string): void => {
    const top = TOPS.find((one) => one === value);
    tend(top ? { did: 'topped', top } : { did: 'rose', percent: Number(value) });
  };
  return (
    <Show
      when={keys()}
      fallback={
        <KitchenPage
          back={starterName(props.house.kitchen().starter)}
          onBack={() => props.onBack()}
          words={
            <Words headline={view().headline} detail={view().detail} care={words.care}>
              <Show when={view().looks}>
                <Tiles
                  label={words.seeAsk}
                  options={Object.entries(words.sees).map(([value, label]) => ({ value, label }))}
                  disabled={!props.house.holds}
                  onChoose={see}
                />
              </Show>
            </Words>
          }
          controls={
            <Show when={view().looks}>
              <Control
                label={words.keyRise}
                disabled={!props.house.holds}
                onPress={() => setKeys(true)}
              />
            </Show>
          }
        />
      }
    >
      <NumberPage
        field={{
          kind: 'number',
          label: words.keyRise,
          ask: words.keyRiseAsk,
          value: null,
          keyed: keyedIn(RISE, '%'),
          whole: false,
          set: (percent) => percent !== null && tend({ did: 'rose', percent }),
        }}
        half={props.house.half(words.keyRise)}
        back={words.strong}
        onBack={() => setKeys(false)}
      />
    </Show>
  );
}
