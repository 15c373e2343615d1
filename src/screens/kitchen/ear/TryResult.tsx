import { For, type JSX } from 'solid-js';
import { judgeTry, type TryTold } from '../../../core/ear/try-round.ts';
import { earTakes, earTry as words } from '../../../core/speech/words/ear-kitchen.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Control } from '../../../parts/Control.tsx';
import { Words } from '../../../parts/Words.tsx';
import { KitchenPage } from '../../KitchenPage.tsx';
import type { TryOver } from './run-try.ts';

/** What came of a try, counted, and what to do about it. */
export function TryResult(props: {
  readonly told: TryTold;
  readonly why: TryOver | 'stopped';
  readonly back: string;
  readonly onAgain: () => void;
  readonly onBack: () => void;
}): JSX.Element {
  const judged = () => judgeTry(props.told);
  const isNone = (): boolean => judged().of === 0;
  const why = (): string | undefined => {
    if (props.why === null) return undefined;
    return props.why === 'gone' ? words.gone : earTakes.why[props.why];
  };
  const lines = (): readonly string[] => {
    const { wrong, room } = judged();
    return [
      ...(wrong > 0 ? [fill(words.wrong, { count: wrong })] : []),
      ...(room === null ? [] : [words.room[room]]),
    ];
  };
  return (
    <KitchenPage
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={
            isNone() ? words.none : fill(words.result, { count: judged().right, of: judged().of })
          }
          detail={isNone() ? undefined : words[judged().hears]}
          care={why()}
        >
          <ul class="kitchen-told">
            <For each={lines()}>{(line) => <li class="act-detail">{line}</li>}</For>
          </ul>
        </Words>
      }
      controls={<Control label={words.again} onPress={() => props.onAgain()} />}
    />
  );
}
