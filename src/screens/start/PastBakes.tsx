import { createMemo, For, Show, type JSX } from 'solid-js';
import type { LogRecord } from '../../core/records/record.ts';
import { notes } from '../../core/speech/en/note.ts';
import { past } from '../../core/speech/en/running.ts';
import { fill } from '../../core/speech/fill.ts';
import { shown } from '../../core/speech/facts.ts';
import { Words } from '../../parts/Words.tsx';
import type { House } from '../house.ts';
import { nameOf } from '../stage-names.ts';

interface Past {
  readonly id: string;
  readonly at: number;
  readonly name: string;
  readonly loaves: number;
  readonly end: string;
}

/** Bakes that are over, the latest first, read off the log: those whose last press still stands. */
export const pastBakes = (records: readonly LogRecord[]): readonly Past[] => {
  const withdrawn = new Set(
    records.flatMap(({ fact }) => (fact.kind === 'takeBack' ? [fact.target] : [])),
  );
  const standing = records.filter(({ fact }) => !withdrawn.has(fact.id));
  return standing
    .flatMap(({ fact }, i): Past[] => {
      if (fact.kind !== 'press' || (fact.act !== 'noted' && fact.act !== 'ended')) return [];
      const start = standing.findLast(
        (row) => row.fact.kind === 'start' && row.fact.bake === fact.who,
      )?.fact;
      if (start?.kind !== 'start') return [];
      const before = records[records.findIndex((row) => row.fact.id === fact.id) - 1]?.position;
      const stage = before?.bakes[fact.who]?.stage ?? standing[i]!.fact.kind;
      const note = notes.find(({ value }) => value === fact.text)?.label ?? fact.text;
      const end =
        fact.act === 'ended'
          ? fill(past.ended, { stage: nameOf(fact.who, stage) })
          : note
            ? fill(past.note, { note })
            : past.noNote;
      const { name } = start.recipe.formula;
      return [{ id: fact.id, at: start.at, name, loaves: start.loaves.length, end }];
    })
    .toReversed();
};

export function PastBakes(props: { readonly house: House }): JSX.Element {
  const bakes = createMemo(() => pastBakes(props.house.records()));
  return (
    <Words headline={past.title} detail={bakes().length === 0 ? past.empty : undefined}>
      <Show when={bakes().length > 0}>
        <ul class="start-past" tabindex="0" aria-label={past.title}>
          <For each={bakes()}>
            {({ at, name, loaves, end }) => (
              <li>
                <b>{fill(past.line, { date: props.house.date(at), name, ...shown({ loaves }) })}</b>
                {` ${end}`}
              </li>
            )}
          </For>
        </ul>
      </Show>
    </Words>
  );
}
