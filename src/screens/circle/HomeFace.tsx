import type { JSX } from 'solid-js';
import { circle as words, neighbourWords } from '../../core/speech/en/circle.ts';
import { cupboard } from '../../core/speech/en/cupboard.ts';
import { orderPage, standingWords } from '../../core/speech/en/orders.ts';
import { start } from '../../core/speech/en/start.ts';
import { Control } from '../../parts/Control.tsx';
import { Words } from '../../parts/Words.tsx';
import { CirclePage } from './CirclePage.tsx';
import type { FaceProps } from './face.ts';

/** The Circle as it opens. */
export function HomeFace(props: FaceProps): JSX.Element {
  return (
    <CirclePage
      wide
      back={start.title}
      onBack={() => props.onBack()}
      words={<Words headline={words.title} />}
      controls={
        <>
          <Control
            label={neighbourWords.title}
            onPress={() => props.onOpen({ at: 'neighbours' })}
          />
          <Control label={orderPage.otherDay} onPress={() => props.onOpen({ at: 'another day' })} />
          <Control label={standingWords.title} onPress={() => props.onOpen({ at: 'standing' })} />
          <Control label={cupboard.title} onPress={() => props.onOpen({ at: 'cupboard' })} />
        </>
      }
    />
  );
}
