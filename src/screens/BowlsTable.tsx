import { For, type JSX } from 'solid-js';
import { doughIn, sharesOf, type Bowl } from '../core/kitchen/split-bowls.ts';
import { bowlPage } from '../core/speech/words/bowls.ts';
import { fill } from '../core/speech/fill.ts';
import { showShares } from '../core/speech/in-bowls.ts';
import { tellLine } from '../core/speech/tell-line.ts';
import { showWeight } from '../core/speech/weights.ts';
import type { Grams, Units } from '../core/units.ts';
import { unbroken } from '../parts/unbroken.ts';
import { softWords } from '../parts/soft-words.ts';

/** More columns of weights than these are not read on a tablet that stands upright. */
const COLUMNS = 3;

const sum = (shares: readonly Grams[]): Grams =>
  shares.reduce((all, grams) => all + Math.round(grams * 10), 0) / 10;

/** What each bowl of a dough takes, line by line. */
export function BowlsTable(props: {
  readonly bowls: readonly Bowl[];
  readonly units: Units;
  /** How the screen it stands on draws a table. */
  readonly class: string;
  /** A column of what the bowls have together, where there are several. */
  readonly totals?: boolean;
}): JSX.Element {
  const hasTotals = (): boolean => props.totals === true && props.bowls.length > 1;
  const isWide = (): boolean => props.bowls.length + (hasTotals() ? 1 : 0) <= COLUMNS;
  const weight = (grams: Grams): string => showWeight(grams, props.units);
  const weights = (shares: readonly Grams[]): readonly string[] => [
    ...(isWide() ? shares.map(weight) : [showShares(shares, props.units)]),
    ...(hasTotals() ? [weight(sum(shares))] : []),
  ];
  const columns = (): readonly string[] => [
    ...(isWide()
      ? props.bowls.map((_, i) => fill(bowlPage.bowl, { bowl: i + 1 }))
      : [bowlPage.each]),
    ...(hasTotals() ? [bowlPage.together] : []),
  ];
  const rows = () => [
    ...(props.bowls[0]?.lines ?? []).map((line) => ({
      name: tellLine(line),
      weights: weights(sharesOf(props.bowls, line.item)),
    })),
    { name: bowlPage.all, weights: weights(props.bowls.map(doughIn)) },
  ];
  return (
    <table class={props.class}>
      <thead>
        <tr>
          <th scope="col">{softWords(bowlPage.line)}</th>
          <For each={columns()}>{(name) => <th scope="col">{softWords(name)}</th>}</For>
        </tr>
      </thead>
      <tbody>
        <For each={rows()}>
          {(row) => (
            <tr>
              <th scope="row">{softWords(row.name)}</th>
              <For each={row.weights}>{(weight) => <td>{unbroken(weight)}</td>}</For>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
