import { createResource, createSignal, For, Show, type JSX } from 'solid-js';
import { messageTo, messageToAll, type MessageRead } from '../../../core/circle/message.ts';
import type { PickList } from '../../../core/circle/pick-up.ts';
import { handMessage as words, handOver } from '../../../core/speech/words/hand-over.ts';
import { Control } from '../../../parts/Control.tsx';
import { Slab } from '../../../parts/Slab.tsx';
import { Words } from '../../../parts/Words.tsx';
import type { House } from '../../house.ts';
import { CirclePage } from '../CirclePage.tsx';

const EVERYONE = 'everyone';

/** A text for one neighbour or for all: copied by a press, and sent by nobody. */
export function MessageFace(props: {
  readonly house: Pick<House, 'sheets'>;
  readonly list: PickList;
  readonly read: MessageRead;
  readonly onBack: () => void;
}): JSX.Element {
  /** An order's id, or all of them. */
  const [to, setTo] = createSignal<string | null>(null);
  const [copied, setCopied] = createSignal<boolean | null>(null);
  // Had before the press: a browser lets a page copy only while its press is fresh.
  const [sheets] = createResource(() => props.house.sheets().catch(() => null));
  const all = () => props.list.hours.flatMap(({ of }) => of);
  const one = () => all().find(({ order }) => order.id === to()) ?? null;
  const text = (): string | null => {
    if (to() === EVERYONE) return messageToAll(props.list, props.read);
    const its = one();
    return its === null ? null : messageTo(its, props.read);
  };
  const pick = (id: string | null): void => {
    setTo(id);
    setCopied(null);
  };
  let shown!: HTMLDivElement;
  const copy = async (): Promise<void> => {
    const done = (await sheets()?.copy(text() ?? '')) ?? false;
    // What could not be copied is marked: a long press on it, and the device's own copy is there.
    if (!done) window.getSelection()?.selectAllChildren(shown);
    setCopied(done);
  };
  const detail = (): string => {
    if (copied() !== null) return copied() ? words.copied : words.notCopied;
    return to() === EVERYONE ? words.names : words.detail;
  };
  return (
    <Show
      when={text() !== null}
      fallback={
        <CirclePage
          wide
          back={handOver.list}
          onBack={() => props.onBack()}
          words={
            <Words headline={words.ask} detail={words.detail}>
              <div class="circle-grid circle-top hand-whom" role="group" aria-label={words.ask}>
                <Control label={words.everyone} strong onPress={() => pick(EVERYONE)} />
                <For each={all()}>
                  {({ order, name }) => (
                    <Control
                      label={name ?? handOver.nobody}
                      value={order.at === null ? handOver.any : props.read.hour(order.at)}
                      fresh={order.id}
                      onPress={() => pick(order.id)}
                    />
                  )}
                </For>
              </div>
            </Words>
          }
        />
      }
    >
      <CirclePage
        wide
        back={words.ask}
        onBack={() => pick(null)}
        words={
          <Words headline={words.title} detail={detail()}>
            <div class="hand-text" ref={shown}>
              <For each={text()?.split('\n')}>{(line) => <p>{line}</p>}</For>
            </div>
          </Words>
        }
        slab={
          <Slab
            label={words.copy}
            then={words.then}
            fresh={words.copy}
            onPress={() => void copy()}
          />
        }
        controls={<Control label={words.another} onPress={() => pick(null)} />}
      />
    </Show>
  );
}
