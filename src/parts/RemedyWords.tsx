import { Show, type JSX } from 'solid-js';
import { remedyPage } from '../core/speech/words/remedy-page.ts';
import type { ToldRemedy } from '../core/speech/tell-remedy.ts';
import { unbroken } from './unbroken.ts';
import './RemedyWords.css';

/** What is done about one sign: now, with its caution, and the next time. */
export function RemedyWords(props: {
  readonly told: ToldRemedy;
  /** Over it, where several stand under each other. */
  readonly named?: boolean;
}): JSX.Element {
  return (
    <section class="remedy">
      <Show when={props.named}>
        <h2 class="remedy-sign">{unbroken(props.told.sign)}</h2>
      </Show>
      <dl class="remedy-ways">
        <dt>{remedyPage.now}</dt>
        <dd>
          {unbroken(props.told.now ?? remedyPage.nothingNow)}
          <Show when={props.told.care}>
            {(care) => <p class="remedy-care barred">{unbroken(care())}</p>}
          </Show>
        </dd>
        <Show when={props.told.next}>
          {(next) => (
            <>
              <dt>{remedyPage.next}</dt>
              <dd>{unbroken(next())}</dd>
            </>
          )}
        </Show>
      </dl>
    </section>
  );
}
