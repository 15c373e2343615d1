import { For, type JSX } from 'solid-js';
import { doughIn, sharesOf, type Bowl } from '../core/kitchen/split-bowls.ts';
import { bowlPage } from '../core/speech/en/bowls.ts';
import { fill } from '../core/speech/fill.ts';
import { showShares } from '../core/speech/in-bowls.ts';
import { showWeight } from '../core/speech/weights.ts';
import type { Units } from '../core/units.ts';

/** More columns than these are not read on a tablet that stands upright. */
const COLUMNS = 3;

/** What each bowl of a dough takes, line by line. */
export function BowlsTable(props: {
  readonly bowls: readonly Bowl[];
  readonly units: Units;
  /** How the screen it stands on draws a table. */
  readonly class: string;
}): JSX.Element {
  const isWide = (): boolean => props.bowls.length <= COLUMNS;
  const weights = (shares: readonly number[]): readonly string[] =>
    isWide()
      ? shares.map((grams) => showWeight(grams, props.units))
      : [showShares(shares, props.units)];
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
    <table class={props.class}>
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
  );
}
