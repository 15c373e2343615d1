import { createSignal, Match, Show, Switch, type JSX } from 'solid-js';
import type { Neighbour } from '../../core/circle/circle.ts';
import { NAME_LETTERS } from '../../core/circle/name.ts';
import { erased, ordersToCome, ownName } from '../../core/circle/neighbours.ts';
import { put } from '../../core/circle/row.ts';
import { neighbourWords as words } from '../../core/speech/words/circle.ts';
import { showAllergens } from '../../core/speech/show-allergen.ts';
import { fill } from '../../core/speech/fill.ts';
import { Control } from '../../parts/Control.tsx';
import { HoldSlab } from '../../parts/HoldSlab.tsx';
import { TwoTaps } from '../../parts/TwoTaps.tsx';
import { Words } from '../../parts/Words.tsx';
import { createCircleClock } from './circle-clock.ts';
import { alreadyTold } from './already-told.ts';
import { CirclePage } from './CirclePage.tsx';
import type { FaceProps } from './face.ts';
import { TakeBack } from './orders/TakeBack.tsx';
import { TextFace } from '../TextFace.tsx';
import { WatchFace } from './WatchFace.tsx';
import { written } from './written.ts';

/** One who has bread: their name, what they must not eat, and the way to have nothing of them here. */
export function NeighbourFace(props: FaceProps & { readonly id: string }): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the house is one
  const clock = createCircleClock(props.house);
  const [face, setFace] = createSignal<'one' | 'name' | 'watch' | 'erase'>('one');
  const one = (): Neighbour | undefined =>
    props.circle.circle().neighbours.find(({ id }) => id === props.id);
  const name = (): string => one()?.name ?? words.gone;
  const back = (): void => void setFace('one');
  const write = (part: Partial<Neighbour>): Promise<boolean> =>
    written(props.house, props.circle.write({ puts: [put('neighbours', { ...one()!, ...part })] }));
  const rename = async (typed: string): Promise<void> => {
    const next = ownName(props.circle.circle(), typed, props.id);
    if (next === '' || next === name() || (await write({ name: next }))) back();
  };
  const erase = async (): Promise<void> => {
    const change = erased(props.circle.circle(), props.id, clock.today());
    if (await written(props.house, props.circle.erase(change))) props.onBack();
  };
  const toCome = (): number => ordersToCome(props.circle.circle(), props.id, clock.today()).length;
  const stands = (): number =>
    props.circle.circle().standing.filter(({ who }) => who === props.id).length;
  return (
    <Switch
      fallback={
        <CirclePage
          back={words.title}
          onBack={() => props.onBack()}
          words={
            <Words headline={name()} detail={one() ? undefined : words.goneDetail}>
              <Show when={one()}>
                <div class="circle-grid circle-top">
                  <Control label={words.name} value={name()} onPress={() => setFace('name')} />
                  <Control
                    label={words.watch}
                    value={showAllergens(one()!.watch) || words.watchNone}
                    onPress={() => setFace('watch')}
                  />
                </div>
              </Show>
            </Words>
          }
          controls={
            <>
              <TakeBack house={props.house} circle={props.circle} />
              <Show when={one()}>
                <Control label={words.erase} onPress={() => setFace('erase')} />
              </Show>
            </>
          }
        />
      }
    >
      <Match when={face() === 'name' && one()}>
        <TextFace
          page={CirclePage}
          ask={words.nameAsk}
          detail={words.nameDetail}
          begun={name()}
          lines="one"
          most={NAME_LETTERS}
          blank={false}
          back={name()}
          care={(typed) => alreadyTold(props, typed, props.id)}
          onTake={(typed) => void rename(typed)}
          onBack={back}
        />
      </Match>
      <Match when={face() === 'watch' && one()}>
        {(its) => (
          <WatchFace
            name={its().name}
            watch={its().watch}
            onWatch={(watch) => void write({ watch })}
            onBack={back}
          />
        )}
      </Match>
      <Match when={face() === 'erase' && one()}>
        <CirclePage
          back={name()}
          onBack={back}
          words={
            <Words
              headline={fill(words.eraseAsk, { name: name() })}
              detail={words.eraseDetail}
              care={
                toCome() + stands() === 0
                  ? undefined
                  : fill(words.eraseOrders, { count: toCome(), n: stands() })
              }
            />
          }
          slab={
            <HoldSlab
              label={words.eraseHold}
              holding={words.eraseHolding}
              onHeld={() => void erase()}
            />
          }
          controls={
            <TwoTaps
              label={words.eraseTwo}
              first={words.eraseFirst}
              second={words.eraseSecond}
              onBoth={() => void erase()}
              between={<Control label={words.keep} onPress={back} />}
            />
          }
        />
      </Match>
    </Switch>
  );
}
