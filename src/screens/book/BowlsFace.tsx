import { Show, type JSX } from 'solid-js';
import type { Bowl } from '../../core/kitchen/split-bowls.ts';
import { tellClocks, tellShares } from '../../core/speech/in-bowls.ts';
import { Words } from '../../parts/Words.tsx';
import { BowlsTable } from '../BowlsTable.tsx';
import type { House } from '../house.ts';
import { BookPage } from './BookPage.tsx';

/** What each bowl of a dough takes, line by line, and how far apart they are mixed. */
export function BowlsFace(props: {
  readonly house: House;
  readonly bowls: readonly Bowl[];
  readonly back: string;
  readonly onBack: () => void;
}): JSX.Element {
  const units = () => props.house.ways();
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
            <BowlsTable bowls={props.bowls} units={units()} class="book-table book-top" />
          </Show>
        </Words>
      }
    />
  );
}
