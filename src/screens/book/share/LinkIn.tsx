import { createResource, Match, Switch, type JSX } from 'solid-js';
import { shareIn } from '../../../core/speech/words/share.ts';
import { fill } from '../../../core/speech/fill.ts';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { BookPage } from '../BookPage.tsx';
import { KeepFace } from './KeepFace.tsx';

/** A formula that came as a link: shown whole, kept by a press alone. */
export default function LinkIn(props: {
  readonly house: House;
  readonly link: string;
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const [read] = createResource(async () => (await props.house.sheets()).readLink(props.link));
  return (
    <Switch>
      <Match when={read()?.formula}>
        {(formula) => (
          <KeepFace
            house={props.house}
            formulas={[formula()]}
            back={props.back}
            onBack={() => props.onBack()}
          />
        )}
      </Match>
      <Match when={read()?.reason}>
        {(reason) => (
          <BookPage
            back={props.back}
            onBack={() => props.onBack()}
            words={<Words headline={shareIn.refused} detail={fill(shareIn.why, { ...reason() })} />}
          />
        )}
      </Match>
    </Switch>
  );
}
