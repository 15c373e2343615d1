import { cleanup, render as draw } from '@solidjs/testing-library';
import { createSignal, type JSX } from 'solid-js';
import { afterEach, describe, expect, it } from 'vitest';
import { BenchFrame } from '../../../src/parts/BenchFrame.tsx';
import { Control } from '../../../src/parts/Control.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { Words } from '../../../src/parts/Words.tsx';

afterEach(cleanup);
const render = (ui: () => JSX.Element) => draw(() => <PressGround>{ui()}</PressGround>);

/** Something to show that counts how often it is drawn. */
const counted = () => {
  const count = { drawn: 0 };
  const Shown = (): JSX.Element => {
    count.drawn += 1;
    return <span>shown</span>;
  };
  return [count, Shown] as const;
};

describe('what is given to a part to show is drawn once', () => {
  it('by the words of an act', () => {
    const [picture, Picture] = counted();
    const [more, More] = counted();
    const { container } = render(() => (
      <Words headline="Fold the dough" picture={<Picture />}>
        <More />
      </Words>
    ));
    expect([picture.drawn, more.drawn]).toEqual([1, 1]);
    expect(container.textContent).toBe('shownFold the doughshown');
  });

  it('by a control', () => {
    const [count, Picture] = counted();
    render(() => <Control label="Go" picture={<Picture />} onPress={() => undefined} />);
    expect(count.drawn).toBe(1);
  });

  it('by the bench, also where its tone or its name changes', () => {
    const [times, Times] = counted();
    const [others, Others] = counted();
    const [tone, setTone] = createSignal<'normal' | 'hot'>('normal');
    const { container } = render(() => (
      <BenchFrame
        label={`Bench, ${tone()}`}
        tone={tone()}
        edge={null}
        times={<Times />}
        words={null}
        others={<Others />}
      />
    ));
    setTone('hot');
    expect(container.querySelector<HTMLElement>('.bench')!.dataset['tone']).toBe('hot');
    expect([times.drawn, others.drawn]).toEqual([1, 1]);
    expect(container.textContent).toBe('shownshown');
  });

  it('by the bench, whose times come and go', () => {
    const [timed, setTimed] = createSignal(true);
    const { container } = render(() => (
      <BenchFrame
        label="Bench"
        edge={null}
        times={timed() ? <b>12 min</b> : undefined}
        words={null}
      />
    ));
    const bench = container.querySelector<HTMLElement>('.bench')!;
    expect([bench.dataset['timeless'], bench.textContent]).toEqual([undefined, '12 min']);
    setTimed(false);
    expect([bench.dataset['timeless'], bench.textContent]).toEqual(['', '']);
    setTimed(true);
    expect([bench.dataset['timeless'], bench.textContent]).toEqual([undefined, '12 min']);
  });
});
