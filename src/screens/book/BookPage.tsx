import type { JSX } from 'solid-js';
import { book } from '../../core/speech/words/book.ts';
import { SidePage, type SidePageProps } from '../SidePage.tsx';
import '../../parts/BenchWide.css';
import './Book.css';

/** One page of the Book. */
export function BookPage(
  props: SidePageProps & {
    /** Across the whole width. */
    readonly wide?: boolean;
  },
): JSX.Element {
  return <SidePage label={book.title} edge={book.edge} ticks={21} long={5} {...props} />;
}
