import { For, type JSX } from 'solid-js';
import type { ListedBake } from '../../../core/log/bake-list.ts';
import { logList as words } from '../../../core/speech/words/log-list.ts';
import type { FaceProps } from '../face.ts';
import { BakeRow } from './BakeRow.tsx';
import type { Rows } from './make-rows.ts';

/** The bakes that are found, as many as there are: only those in sight are drawn. */
export function BakeRows(
  props: Pick<FaceProps, 'house' | 'log'> & {
    readonly rows: Rows<ListedBake>;
    readonly count: number;
    readonly onPick: (start: string) => void;
  },
): JSX.Element {
  // eslint-disable-next-line solid/reactivity -- the rows are one
  const { rows } = props;
  return (
    <div class="log-place" ref={rows.place}>
      <div class="log-box" ref={rows.box} style={{ '--row-pitch': `${rows.pitch()}px` }}>
        {/* Without its bullets some readers take it for no list. */}
        <ul
          role="list"
          class="log-rows"
          aria-label={words.list}
          style={{ '--count': String(props.count) }}
          onKeyDown={(e) => rows.onKeyDown(e)}
          onFocusOut={({ currentTarget, relatedTarget }) => {
            if (!currentTarget.contains(relatedTarget as Node | null)) rows.focused(null);
          }}
        >
          <For each={rows.drawn()}>
            {(bake) => (
              <li
                data-row={rows.at(bake)}
                aria-setsize={props.count}
                aria-posinset={rows.at(bake) + 1}
                style={{ '--at': String(rows.at(bake)) }}
                onFocusIn={() => rows.focused(bake)}
              >
                <BakeRow
                  house={props.house}
                  log={props.log}
                  bake={bake}
                  letters={rows.letters()}
                  onPress={() => props.onPick(bake.start)}
                />
              </li>
            )}
          </For>
        </ul>
      </div>
    </div>
  );
}
