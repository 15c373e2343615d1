import type { JSX } from 'solid-js';
import { log } from '../../core/speech/words/log.ts';
import { SidePage, type SidePageProps } from '../SidePage.tsx';
import '../../parts/BenchWide.css';
import './Log.css';

/** One page of the Log: a month a long tick along its edge. */
export function LogPage(
  props: SidePageProps & {
    /** Across the whole width. */
    readonly wide?: boolean;
    /** One control where the ear stands on a bench. */
    readonly aside?: JSX.Element;
    /** What is being said, on a page that speaks. */
    readonly caption?: string | undefined;
  },
): JSX.Element {
  return <SidePage label={log.title} edge={log.edge} ticks={25} long={6} {...props} />;
}
