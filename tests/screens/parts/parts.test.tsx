import { cleanup, render as draw, screen } from '@solidjs/testing-library';
import { createSignal, Show, type JSX } from 'solid-js';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { CallMark } from '../../../src/parts/CallMark.tsx';
import { EarPanel } from '../../../src/parts/EarPanel.tsx';
import { Lines } from '../../../src/parts/Lines.tsx';
import { Notice } from '../../../src/parts/Notice.tsx';
import { PressGround } from '../../../src/parts/PressGround.tsx';
import { ReturnCard } from '../../../src/parts/ReturnCard.tsx';
import { RuledEdge } from '../../../src/parts/RuledEdge.tsx';
import { Slab } from '../../../src/parts/Slab.tsx';
import { Stepper } from '../../../src/parts/Stepper.tsx';
import { Tiles } from '../../../src/parts/Tiles.tsx';
import { WIPE_S, WipeLock } from '../../../src/parts/WipeLock.tsx';
import { down, tap, up } from './touching.ts';

beforeEach(() =>
  vi.useFakeTimers({
    toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'performance'],
  }),
);
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});
/** Every test has a room of its own: no dead time is left over from the one before. */
const render = (ui: () => JSX.Element) => draw(() => <PressGround>{ui()}</PressGround>);
const armed = (): unknown => vi.advanceTimersByTime(1100);
const button = (name: string): HTMLElement => screen.getByRole('button', { name });

describe('tiles', () => {
  const options = ['Springs back', 'Fills slowly', 'Stays'].map((label, i) => ({
    value: `v${i}`,
    label,
  }));

  it('give the value of the one that is pressed, none chosen beforehand', () => {
    const onChoose = vi.fn();
    render(() => <Tiles label="Poke" options={options} onChoose={onChoose} />);
    armed();
    const tiles = screen.getAllByRole('button');
    expect(tiles.map((tile) => tile.getAttribute('aria-pressed'))).toEqual([null, null, null]);
    tap(button('Fills slowly'));
    expect(onChoose).toHaveBeenCalledExactlyOnceWith('v1');
  });

  it('show the answer that stands where one may be changed', () => {
    render(() => <Tiles label="Poke" options={options} chosen="v2" onChoose={() => undefined} />);
    const pressed = screen.getAllByRole('button').map((tile) => tile.getAttribute('aria-pressed'));
    expect(pressed).toEqual(['false', 'false', 'true']);
  });
});

describe('the wiping lock', () => {
  it('counts 20 s down, lets no touch through, and ends by itself', () => {
    const onOver = vi.fn();
    const onPress = vi.fn();
    const [locked, setLocked] = createSignal(true);
    render(() => (
      <>
        <Slab label="That’s done" onPress={onPress} />
        <Show when={locked()}>
          <WipeLock
            words={(seconds) => `Wipe away: ${seconds} s`}
            onOver={() => {
              onOver();
              setLocked(false);
            }}
          />
        </Show>
      </>
    ));
    expect(WIPE_S).toBe(20);
    const lock = screen.getByRole('alertdialog');
    expect(lock.textContent).toBe('Wipe away: 20 s');
    vi.advanceTimersByTime(12_000);
    expect(lock.textContent).toBe('Wipe away: 8 s');
    for (const pointerId of [1, 2, 3]) down(lock, { pointerId });
    vi.advanceTimersByTime(7_000);
    expect(onOver).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1_000);
    expect(onOver).toHaveBeenCalledTimes(1);
    for (const pointerId of [1, 2, 3]) up(button('That’s done'), { pointerId });
    expect(onPress).not.toHaveBeenCalled();
    expect(screen.queryByRole('alertdialog')).toBeNull();
  });
});

describe('a return card', () => {
  it('shows its lines in order and goes only by a press', () => {
    const onClose = vi.fn();
    render(() => (
      <ReturnCard
        title="While you were away"
        lines={['Fold 2 is 5 min over.', 'Fold 1 done, 10:20.', 'Next look at 12:32.']}
        close="Go on"
        onClose={onClose}
      />
    ));
    const lines = screen.getAllByRole('listitem').map((li) => li.textContent?.replace(/\s/g, ' '));
    expect(lines).toEqual(['Fold 2 is 5 min over.', 'Fold 1 done, 10:20.', 'Next look at 12:32.']);
    armed();
    vi.advanceTimersByTime(3_600_000);
    expect(onClose).not.toHaveBeenCalled();
    tap(button('Go on'));
    expect(onClose).toHaveBeenCalledTimes(1);
  });
});

describe('a notice', () => {
  it('is told at once and has at most one action', () => {
    const press = vi.fn();
    render(() => (
      <Notice text="The disk is full. Export now." action={{ label: 'Export', press }} />
    ));
    expect(screen.getByRole('alert').textContent).toContain('The disk is full. Export now.');
    armed();
    tap(button('Export'));
    expect(press).toHaveBeenCalledTimes(1);
  });

  it('without an action has nothing to press', () => {
    render(() => <Notice text="Not saved yet." />);
    expect(screen.queryByRole('button')).toBeNull();
  });
});

describe('the ruled edge', () => {
  it('has a tick a step, long where a part begins, and a pointer at this step', () => {
    const [at, setAt] = createSignal(0);
    const ticks = [true, false, true, false].map((long) => ({ long }));
    render(() => <RuledEdge label="Step 1 of 4, levain" ticks={ticks} at={at()} />);
    const edge = screen.getByRole('img', { name: 'Step 1 of 4, levain' });
    const marks = [...edge.querySelectorAll<HTMLElement>('.tick')];
    expect(marks.map((tick) => tick.dataset['long'])).toEqual(['', undefined, '', undefined]);
    const pointer = edge.querySelector<HTMLElement>('.pointer')!;
    for (const step of [0, 1, 2, 3]) {
      setAt(step);
      const place = pointer.style.getPropertyValue('--at');
      expect(place).toBe(marks[step]!.style.getPropertyValue('--at'));
      expect(place).toBe(`${12.5 + 25 * step}%`);
    }
  });
});

describe('call marks', () => {
  it('differ in shape and word, not in colour alone', () => {
    const kinds = ['look', 'act', 'hot'] as const;
    const shapes = kinds.map((kind) => {
      const { container, unmount } = render(() => <CallMark kind={kind} word={`word ${kind}`} />);
      expect(container.textContent).toBe(`word ${kind}`);
      const shape = container.querySelector('svg')!.innerHTML.replaceAll('<!---->', '');
      unmount();
      return shape;
    });
    expect(new Set(shapes).size).toBe(3);
    for (const shape of shapes) expect(shape.length).toBeGreaterThan(20);
  });
});

describe('lines to weigh', () => {
  it('say which one it is now', () => {
    render(() => (
      <Lines
        label="To weigh"
        lines={[
          { label: '200 g flour', state: 'done' },
          { label: '150 g water', state: 'now' },
          { label: '4 g salt', state: 'next' },
        ]}
      />
    ));
    const current = screen.getAllByRole('listitem').map((li) => li.getAttribute('aria-current'));
    expect(current).toEqual([null, 'step', null]);
  });
});

describe('the ear panel', () => {
  it('is pressed to arm the sound, and nothing to press once it is armed', () => {
    const onArm = vi.fn();
    const [locked, setLocked] = createSignal(true);
    render(() => (
      <EarPanel
        sound={locked() ? 'Tap to arm sound' : 'Sound is on'}
        lit="Screen stays on"
        onArm={locked() ? onArm : undefined}
      />
    ));
    armed();
    tap(screen.getByRole('button', { name: /Tap to arm sound/ }));
    expect(onArm).toHaveBeenCalledTimes(1);
    setLocked(false);
    expect(screen.queryByRole('button')).toBeNull();
    expect(screen.getByText('Sound is on')).toBeTruthy();
    expect(screen.getByText('Screen stays on')).toBeTruthy();
  });
});

describe('a stepper', () => {
  it('counts by single presses and stops at its ends', () => {
    const counted: number[] = [];
    const [count, setCount] = createSignal(1);
    const onChange = (n: number): void => {
      counted.push(setCount(n));
    };
    render(() => (
      <Stepper
        label="Loaves"
        value={count()}
        least={1}
        most={3}
        fewer="One fewer"
        more="One more"
        onChange={onChange}
      />
    ));
    armed();
    tap(button('One fewer'));
    for (let n = 0; n < 4; n++) {
      vi.advanceTimersByTime(150);
      tap(button('One more'));
    }
    expect(counted).toEqual([2, 3]);
  });
});

describe('a slab', () => {
  it('tells its longest word to the style, so that it may be as big as fits', () => {
    const [label, setLabel] = createSignal('That’s done');
    render(() => <Slab label={label()} then="then divide" onPress={() => undefined} />);
    const longest = (): string =>
      document.querySelector<HTMLElement>('.slab-room')!.style.getPropertyValue('--longest');
    expect(longest()).toBe('6');
    setLabel('Temperature taken');
    expect(longest()).toBe('11.5');
    expect(button('Temperature takenthen divide')).toBeTruthy();
  });
});
