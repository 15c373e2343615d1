import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, expect, it, vi } from 'vitest';
import { LetterPad } from '../../../src/parts/LetterPad.tsx';
import { ARMED, down, place, tap, turnedClock, up } from './touching.ts';

afterEach(cleanup);

function pad(begun = '', lines: 'one' | 'many' = 'many', most = 200) {
  const clock = turnedClock();
  const [text, setText] = createSignal(begun);
  const onDone = vi.fn();
  const onTablet = vi.fn();
  const onText = vi.fn(setText);
  render(() => (
    <LetterPad
      ask="What should be remembered?"
      text={text()}
      {...{ lines, most, onText, onDone, onTablet }}
      now={clock}
    />
  ));
  clock.at += ARMED;
  const field = () => screen.getByRole<HTMLTextAreaElement>('textbox');
  const key = (name: string): HTMLElement => screen.getByRole('button', { name });
  const press = (...names: string[]): void => {
    for (const name of names) {
      clock.at += ARMED;
      tap(key(name));
    }
  };
  /** Letters and blanks as their keys stand there. */
  const type = (words: string): void => {
    for (const sign of words) press(sign === ' ' ? 'Blank' : sign);
  };
  return { clock, text, field, key, press, type, onText, onDone, onTablet };
}

it('writes a note, its sentences with capitals by themselves', () => {
  const { type, press, text, onText, field } = pad();
  type('It sang');
  press('123 é: figures, stops and more letters', 'Full stop', 'Blank');
  type('Less');
  expect(text()).toBe('It sang. Less');
  expect(field().value).toBe('It sang. Less');
  expect(onText).toHaveBeenLastCalledWith('It sang. Less');
});

it('keeps the device’s keys away, and has the focus for one that is plugged in', () => {
  const { field, text, press } = pad('Rye');
  expect(field().getAttribute('inputmode')).toBe('none');
  expect(document.activeElement).toBe(field());
  fireEvent.input(field(), { target: { value: 'Rye and oats' } });
  press('Erase');
  expect(text()).toBe('Rye and oat');
});

it('takes a doubled letter at once, but no bounce, and acts when it is let go inside', () => {
  const { clock, key, text } = pad('R');
  tap(key('o'));
  clock.at += 120;
  tap(key('o'));
  clock.at += 20;
  tap(key('o'));
  expect(text()).toBe('Roo');
  clock.at += 120;
  const f = key('f');
  place(f, 0, 0, 100, 100);
  down(f, { clientX: 50, clientY: 50 });
  expect(text()).toBe('Roo');
  up(f, { clientX: 50, clientY: 150 });
  expect(text()).toBe('Roo');
});

it('erases words one by one, and puts them back one by one', () => {
  const { press, text, key } = pad('The crust sang');
  expect(key('Put back').getAttribute('aria-disabled')).toBe('true');
  press('Put back');
  expect(text()).toBe('The crust sang');
  press('Erase word', 'Erase word');
  expect(text()).toBe('The ');
  press('Put back');
  expect(text()).toBe('The crust ');
  press('Put back');
  expect(text()).toBe('The crust sang');
  press('Erase word', 'Erase');
  expect(text()).toBe('The crust');
  // Something else was written since: the way back would lose it.
  expect(key('Put back').getAttribute('aria-disabled')).toBe('true');
});

it('keeps a way back over a turned page, and loses it to what is typed by a keyboard', () => {
  const { press, field, key } = pad('The crust');
  press('Erase word', '123 é: figures, stops and more letters');
  expect(key('Put back').getAttribute('aria-disabled')).toBeNull();
  fireEvent.input(field(), { target: { value: 'The crumb' } });
  expect(key('Put back').getAttribute('aria-disabled')).toBe('true');
});

it('has figures and stops and other letters on one page, rare ones behind it', () => {
  const { press, text, type } = pad('');
  press('123 é: figures, stops and more letters', 'É');
  type('t');
  press('123 é: figures, stops and more letters', 'é');
  press('Blank', '123 é: figures, stops and more letters', '2', '5', 'Comma', '5');
  expect(text()).toBe('Été 25,5');
  press('More: letters and signs', 'Percent');
  expect(text()).toBe('Été 25,5%');
  press('New line');
  type('O');
  expect(text()).toBe('Été 25,5%\nO');
});

it('has one capital by its key, or one small letter where a capital would stand', () => {
  const { press, text, type, key } = pad('for B');
  press('Blank', '123 é: figures, stops and more letters');
  expect(key('Aa: a capital letter').getAttribute('aria-pressed')).toBe('false');
  press('Aa: a capital letter');
  type('Ab');
  expect(text()).toBe('for B Ab');
  cleanup();
  const small = pad('');
  small.press('123 é: figures, stops and more letters', 'Aa: a capital letter');
  small.type('a');
  expect(small.text()).toBe('a');
});

it('arms a turned page anew: what is under the finger is another sign now', () => {
  const { clock, press, key, text } = pad('a');
  press('123 é: figures, stops and more letters');
  clock.at += 200;
  tap(key('1'));
  expect(text()).toBe('a');
  clock.at += 200;
  tap(key('1'));
  expect(text()).toBe('a1');
});

it('writes where the letter’s place was set', () => {
  const { field, press, text } = pad('Ry oats');
  field().setSelectionRange(2, 2);
  press('e');
  expect(text()).toBe('Rye oats');
  expect(field().selectionStart).toBe(3);
});

it('has no new line in a name, and stops where a name is full', () => {
  const { press, text, key, field } = pad('Mill', 'one', 5);
  expect(field().tagName).toBe('INPUT');
  press('123 é: figures, stops and more letters', 'More: letters and signs', 'New line');
  expect(text()).toBe('Mill');
  expect(key('New line').getAttribute('aria-disabled')).toBe('true');
  press('abc: letters a to z', 's', 's');
  expect(text()).toBe('Mills');
});

it('ends, and gives way to the tablet’s own keys, by a press apart', () => {
  const { press, onDone, onTablet, clock } = pad();
  clock.at += 700;
  press('Done');
  expect(onDone).toHaveBeenCalledOnce();
  clock.at += 700;
  press('Tablet’s keys');
  expect(onTablet).toHaveBeenCalledOnce();
});
