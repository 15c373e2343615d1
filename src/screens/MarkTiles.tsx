import { For, type JSX } from 'solid-js';
import { HAND_MARKS, type HandMark as Mark } from '../core/small/marks.ts';
import { handMark, handMarks } from '../core/speech/words/small.ts';
import { HandMark } from '../parts/HandMark.tsx';
import { Pressable } from '../parts/Pressable.tsx';
import type { House } from './house.ts';
import './MarkTiles.css';

/** The marks to pick from; those that were picked are known by a tick and a thick edge. */
export function MarkTiles(props: { readonly house: House }): JSX.Element {
  const picked = (mark: Mark): boolean => props.house.ways().marks.includes(mark);
  const turn = (mark: Mark): void => {
    const { marks } = props.house.ways();
    props.house.choose({
      marks: picked(mark) ? marks.filter((one) => one !== mark) : [...marks, mark],
    });
  };
  return (
    <div class="mark-tiles" role="group" aria-label={handMark.title}>
      <For each={HAND_MARKS}>
        {(mark) => (
          <Pressable class="tile mark-tile" chosen={picked(mark)} onPress={() => turn(mark)}>
            <HandMark mark={mark} />
            <span>{handMarks[mark]}</span>
          </Pressable>
        )}
      </For>
    </div>
  );
}
