import type { JSX } from 'solid-js';
import { kitchenPage } from '../core/speech/words/kitchen-page.ts';
import { SidePage, type SidePageProps } from './SidePage.tsx';
import './KitchenPage.css';

/** One page of the Kitchen. */
export function KitchenPage(
  props: SidePageProps & {
    /** One control where the ear stands on a bench. */
    readonly aside?: JSX.Element;
  },
): JSX.Element {
  return (
    <SidePage label={kitchenPage.title} edge={kitchenPage.edge} ticks={13} long={4} {...props} />
  );
}
