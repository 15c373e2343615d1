import { For, Show, type JSX } from 'solid-js';
import { doughIn, sharesOf, type Bowl } from '../../core/kitchen/split-bowls.ts';
import { bowlPage } from '../../core/speech/en/bowls.ts';
import { fill } from '../../core/speech/fill.ts';
import { showShares, tellClocks, tellShares } from '../../core/speech/in-bowls.ts';
import { showWeight } from '../../core/speech/weights.ts';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';

/** More columns than these are not read on a tablet that stands upright. */
const COLUMNS = 3;

/** What each bowl of a dough takes, line by line, and how far apart they are mixed. */
export function BowlsFace(props: {
  readonly house: House;
  readonly bowls: readonly Bowl[];
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const units = () => props.house.ways();
  const isWide = (): boolean => props.bowls.length <= COLUMNS;
  const weights = (shares: readonly number[]): readonly string[] =>
    isWide() ? shares.map((grams) => showWeight(grams, units())) : [showShares(shares, units())];
  const columns = (): readonly string[] =>
    isWide() ? props.bowls.map((_, i) => fill(bowlPage.bowl, { bowl: i + 1 })) : [bowlPage.each];
  const rows = () => [
    ...(props.bowls[0]?.lines ?? []).map(({ item, name }) => ({
      name,
      weights: weights(sharesOf(props.bowls, item)),
    })),
    { name: bowlPage.all, weights: weights(props.bowls.map(doughIn)) },
  ];
  return (
    <BookPage
      wide
      back={props.back}
      onBack={() => props.onBack()}
      words={
        <Words
          headline={tellShares(props.bowls, units())}
          detail={tellClocks(props.bowls.length)?.shown}
        >
          <Show when={props.bowls.length > 1}>
            <table class="book-table book-top">
              <thead>
                <tr>
                  <th scope="col">{bowlPage.line}</th>
                  <For each={columns()}>{(name) => <th scope="col">{name}</th>}</For>
                </tr>
              </thead>
              <tbody>
                <For each={rows()}>
                  {(row) => (
                    <tr>
                      <th scope="row">{row.name}</th>
                      <For each={row.weights}>{(weight) => <td>{weight}</td>}</For>
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
          </Show>
        </Words>
      }
    />
  );
}
