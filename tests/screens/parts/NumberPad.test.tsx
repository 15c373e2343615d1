import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { NumberPad } from '../../../src/parts/NumberPad.tsx';
import { numberOf, typeKey, type PadKey } from '../../../src/parts/typed.ts';
import { ARMED, tap, turnedClock } from './touching.ts';

afterEach(cleanup);

function pad() {
  const clock = turnedClock();
  const onTyped = vi.fn();
  const onDone = vi.fn();
  const words = {
    point: ',',
    clear: 'Clear',
    hint: '10 to 40 °C',
    outside: 'Measure again',
    done: 'Done',
  };
  render(() => (
    <NumberPad
      label="Dough temperature"
      unit="°C"
      words={words}
      min={10}
      max={40}
      now={clock}
      onTyped={onTyped}
      onDone={onDone}
    />
  ));
  clock.at += ARMED;
  const type = (keys: string): void => {
    for (const key of keys) {
      clock.at += 120;
      tap(screen.getByRole('button', { name: key }));
    }
  };
  const shown = (): string => document.querySelector('.pad-typed')?.textContent ?? 'no display';
  return { clock, onTyped, onDone, type, shown };
}

it('is blank at first and has nothing to finish with', () => {
  const { clock, shown, onDone, onTyped } = pad();
  expect(shown()).toBe('');
  clock.at += 700;
  tap(screen.getByRole('button', { name: 'Done' }));
  expect(onDone).not.toHaveBeenCalled();
  expect(onTyped).not.toHaveBeenCalled();
});

it('shows what is typed, with the point of the language, and gives the number', () => {
  const { clock, type, shown, onDone, onTyped } = pad();
  type('24,5');
  expect(shown()).toBe('24,5');
  expect(onTyped.mock.calls.map(([value]) => value)).toEqual([2, 24, 24, 24.5]);
  clock.at += 120;
  tap(screen.getByRole('button', { name: 'Done' }));
  expect(onDone).toHaveBeenCalledExactlyOnceWith(24.5);
});

it('takes a doubled digit but not a bounce', () => {
  const { clock, type, shown } = pad();
  type('22');
  expect(shown()).toBe('22');
  clock.at += 20;
  tap(screen.getByRole('button', { name: '2' }));
  expect(shown()).toBe('22');
});

it('clears', () => {
  const { clock, type, shown, onTyped } = pad();
  type('24');
  clock.at += 120;
  tap(screen.getByRole('button', { name: 'Clear' }));
  expect(shown()).toBe('');
  expect(onTyped).toHaveBeenLastCalledWith(null);
});

it('says when a number is implausible and gives it all the same', () => {
  const { clock, type, onDone } = pad();
  const hint = screen.getByRole('status', { name: '' });
  type('40');
  expect(document.querySelector('.pad-hint')?.textContent).toBe('10 to 40\u00a0°C');
  type('0');
  expect(document.querySelector('.pad-hint')?.textContent).toBe('Measure again');
  expect(hint).toBeTruthy();
  clock.at += 120;
  tap(screen.getByRole('button', { name: 'Done' }));
  expect(onDone).toHaveBeenCalledExactlyOnceWith(400);
});

it('listens to a keyboard', () => {
  const { shown } = pad();
  const group = screen.getByRole('group', { name: 'Dough temperature' });
  for (const key of ['2', '4', ',', '5', 'x']) fireEvent.keyDown(group, { key });
  expect(shown()).toBe('24,5');
  fireEvent.keyDown(group, { key: 'Backspace' });
  expect(shown()).toBe('');
});

it.each([
  ['007', '7'],
  ['0.5', '0.5'],
  ['.5', '.5'],
  ['1..2', '1.2'],
  ['1234567', '123456'],
  ['12.', '12.'],
])('typing %s stands as %s', (keys, stands) => {
  expect([...keys].reduce((text, key) => typeKey(text, key as PadKey), '')).toBe(stands);
});

it.each([
  ['', null],
  ['.', null],
  ['12.', 12],
  ['.5', 0.5],
  ['0', 0],
])('%j reads as %s', (text, value) => {
  expect(numberOf(text)).toBe(value);
});

it('sets the point before a digit that would pass what can be, after two whole digits', () => {
  const keys = (text: string, possible: number) =>
    [...text].reduce((typed, key) => typeKey(typed, key as PadKey, possible), '');
  expect(keys('245', 100)).toBe('24.5');
  expect(keys('100', 100)).toBe('100');
  expect(keys('99', 60)).toBe('99');
  expect(keys('7.5', 100)).toBe('7.5');
  expect(keys('24.5', 100)).toBe('24.5');
  expect(keys('9655', 130)).toBe('96.55');
  expect(keys('99999', 99_999)).toBe('99999');
  expect(keys('999999', 99_999)).toBe('999999');
});
