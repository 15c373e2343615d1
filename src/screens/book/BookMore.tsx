import { createSignal, Show, type JSX } from 'solid-js';
import { bench } from '../../core/speech/words/bench.ts';
import { book, bookMore, conventions } from '../../core/speech/words/book.ts';
import { picture } from '../../core/speech/words/picture.ts';
import { share } from '../../core/speech/words/share.ts';
import { showBread } from '../../core/speech/show-bread.ts';
import { Control } from '../../parts/Control.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import type { House } from '../house.ts';
import type { Editing } from './editing.ts';

export type MorePage = 'picture' | 'compare' | 'versions' | 'notes' | 'name' | 'convention';

/** What else may be done with a formula. */
export function BookMore(props: {
  readonly house: House;
  readonly editing: Editing;
  readonly onPage: (page: MorePage) => void;
  readonly onCopy: () => void;
  readonly onShare: () => void;
  readonly onDrop: () => void;
  readonly onList: () => void;
  readonly onClose: () => void;
}): JSX.Element {
  const [asks, setAsks] = createSignal(false);
  const still = (): boolean => !props.house.holds;
  const formula = () => props.editing.formula();
  return (
    <Show
      when={asks()}
      fallback={
        <Sheet title={showBread(formula().name)}>
          <div class="sheet-grid">
            <Control label={bench.close} onPress={() => props.onClose()} />
            <Show when={props.editing.changed()}>
              <Control
                label={bookMore.undo}
                onPress={() => {
                  props.editing.undo();
                  props.onClose();
                }}
              />
              <Control label={book.toList} onPress={() => props.onList()} />
            </Show>
            <Control label={bookMore.copy} disabled={still()} onPress={() => props.onCopy()} />
            <Control label={share.title} onPress={() => props.onShare()} />
            <Control label={picture.title} onPress={() => props.onPage('picture')} />
            <Control label={bookMore.compare} onPress={() => props.onPage('compare')} />
            <Control label={bookMore.versions} onPress={() => props.onPage('versions')} />
            <Control
              label={bookMore.notes}
              disabled={still()}
              onPress={() => props.onPage('notes')}
            />
            <Control
              label={bookMore.name}
              disabled={still()}
              onPress={() => props.onPage('name')}
            />
            <Control
              label={bookMore.count}
              value={formula().convention && conventions[formula().convention!]}
              disabled={still()}
              onPress={() => props.onPage('convention')}
            />
            <Control label={bookMore.drop} disabled={still()} onPress={() => setAsks(true)} />
          </div>
        </Sheet>
      }
    >
      <Sheet title={bookMore.dropAsk}>
        <p>{bookMore.dropSaid}</p>
        <div class="sheet-grid">
          <Control label={bookMore.dropNo} onPress={() => setAsks(false)} />
          <Control label={bookMore.dropYes} onPress={() => props.onDrop()} />
        </div>
      </Sheet>
    </Show>
  );
}
