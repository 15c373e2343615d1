import { createMemo, Show, type JSX } from 'solid-js';
import type { ListedBake } from '../../../core/log/bake-list.ts';
import { notedOf } from '../../../core/log/find-bakes.ts';
import { tagName } from '../../../core/log/tags.ts';
import { cutShort } from '../../../core/speech/cut-short.ts';
import { logList as words, turnedWords } from '../../../core/speech/words/log-list.ts';
import { fill } from '../../../core/speech/fill.ts';
import { showBread } from '../../../core/speech/show-bread.ts';
import { Pressable } from '../../../parts/Pressable.tsx';
import { unbroken } from '../../../parts/unbroken.ts';
import type { FaceProps } from '../face.ts';
import { TurnedMark } from '../TurnedMark.tsx';

/** Of a line's letters so many are as wide as its bold ones. */
const BOLD = 0.93;

/** One bake: its mark, its bread, when, how many, and what was said of it. */
export function BakeRow(
  props: Pick<FaceProps, 'house' | 'log'> & {
    readonly bake: ListedBake;
    /** That have room in one line. */
    readonly letters: number;
    readonly onPress: () => void;
  },
): JSX.Element {
  const about = () => props.log.abouts()[props.bake.start];
  /** A note that one press left is its mark's word already. */
  const note = () => about()?.note || (isOwn() ? props.bake.note : null);
  const isOwn = () => notedOf(props.bake) === props.bake.note;
  const loaves = () =>
    props.bake.loaves === 1 ? words.loaf : fill(words.loaves, { count: props.bake.loaves });
  // Asked of the browser's calendar, which is slow about it: once a row.
  const date = createMemo(() => props.house.date(props.bake.at));
  const both = () => `${date()} · ${loaves()}`;
  /** Where a line has not the room for both the loaves go down to the next. */
  const isNarrow = () => both().length > props.letters;
  const said = () =>
    [
      ...(isNarrow() ? [loaves()] : []),
      ...(about()?.hidden ? [words.hiddenOne] : []),
      ...(about()?.tags ?? []).map(tagName),
      ...(note() ? [note()] : []),
    ].join(' · ');
  return (
    <Pressable class="log-bake" fresh={props.bake.start} onPress={() => props.onPress()}>
      <span class="log-turned">
        <TurnedMark turned={props.bake.turned} />
        <b>{turnedWords[props.bake.turned]}</b>
      </span>
      <span class="log-told">
        <b>{unbroken(cutShort(showBread(props.bake.name), Math.floor(BOLD * props.letters)))}</b>
        <span>{isNarrow() ? date() : both()}</span>
        <Show when={said()}>{(text) => <span>{cutShort(text(), props.letters)}</span>}</Show>
      </span>
    </Pressable>
  );
}
