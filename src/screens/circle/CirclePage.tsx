import type { JSX } from 'solid-js';
import { circle } from '../../core/speech/words/circle.ts';
import { SidePage, type SidePageProps } from '../SidePage.tsx';
import '../../parts/BenchWide.css';
import './Circle.css';

/** One page of the Circle: a day of the week a long tick along its edge. */
export function CirclePage(
  props: SidePageProps & {
    /** Across the whole width. */
    readonly wide?: boolean;
    /** One control where the ear stands on a bench. */
    readonly aside?: JSX.Element;
  },
): JSX.Element {
  return <SidePage label={circle.title} edge={circle.edge} ticks={29} long={4} {...props} />;
}
