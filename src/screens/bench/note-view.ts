import { bakeWords } from '../../core/speech/words/bake-words.ts';
import { noNote, notes } from '../../core/speech/words/note.ts';
import type { Focus } from '../focus.ts';
import type { Asked } from './view.ts';

/** The last act: one note by one press, or none. */
export function noteView({ who }: Focus, stage: string): Asked | null {
  if (stage !== 'cool.note') return null;
  const words = bakeWords['cool.note'];
  return {
    headline: words.headline,
    detail: '',
    slab: { label: noNote.label, then: noNote.then, deed: { kind: 'press', who, act: 'noted' } },
    tiles: notes.map(({ value, label }) => ({
      label,
      deed: { kind: 'press', who, act: 'noted', text: value },
    })),
  };
}
