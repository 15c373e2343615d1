import type { JSX } from 'solid-js';
import { controls } from '../../core/speech/words/controls.ts';
import { askPage } from '../../core/speech/words/day.ts';
import { BenchFrame } from '../../parts/BenchFrame.tsx';
import { Caption } from '../../parts/Caption.tsx';
import { RuledEdge } from '../../parts/RuledEdge.tsx';
import '../../parts/BenchWide.css';
import './Day.css';

const EDGE = Array.from({ length: 25 }, (_, i) => ({ long: i % 6 === 0 }));

/** One page of the Day: an hour a tick along its edge. */
export function DayPage(props: {
  readonly words: JSX.Element;
  readonly slab: JSX.Element;
  readonly controls?: JSX.Element;
  /** Across the whole width. */
  readonly wide?: boolean;
  /** What is being said. */
  readonly caption: string;
}): JSX.Element {
  return (
    <BenchFrame
      label={askPage.title}
      wide={props.wide}
      further={controls.readOn}
      edge={<RuledEdge label={askPage.edge} ticks={EDGE} at={0} />}
      words={props.words}
      slab={props.slab}
      controls={props.controls}
      over={<Caption text={props.caption} seen />}
    />
  );
}
