import { Match, Switch, type JSX } from 'solid-js';
import type { FaceProps } from '../face.ts';
import { BakesPage } from './BakesPage.tsx';
import { FindFace } from './FindFace.tsx';
import { FOUND_BY, type Finding, type FoundBy } from './finding.ts';
import { makeFound } from './found.ts';
import { PickFace } from './PickFace.tsx';
import './List.css';

/** The Log as it opens: all bakes, and what finds one of them. */
export function ListFace(props: FaceProps & { readonly finding: Finding }): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- house, log and finding are one each
  const found = makeFound(props, props.finding);
  const by = (): FoundBy | false => {
    const page = props.finding.page();
    return FOUND_BY.find((one) => one === page) ?? false;
  };
  return (
    <Switch fallback={<BakesPage {...props} found={found} />}>
      <Match when={props.finding.page() === 'find'}>
        <FindFace finding={props.finding} found={found} />
      </Match>
      <Match when={by()} keyed>
        {(one) => <PickFace by={one} finding={props.finding} found={found} />}
      </Match>
    </Switch>
  );
}
