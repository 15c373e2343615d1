import type { JSX } from 'solid-js';
import type { SidePageProps } from '../../SidePage.tsx';
import { CirclePage } from '../CirclePage.tsx';
import './Cupboard.css';

/** One page of the store cupboard. */
export const CupboardPage = (props: SidePageProps & { readonly wide?: boolean }): JSX.Element => (
  <CirclePage {...props} />
);
