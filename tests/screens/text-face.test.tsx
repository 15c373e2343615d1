import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { PressGround } from '../../src/parts/PressGround.tsx';
import { LogPage } from '../../src/screens/log/LogPage.tsx';
import { TextFace } from '../../src/screens/TextFace.tsx';
import { tap, turnedClock } from './parts/touching.ts';

afterEach(cleanup);

function face(
  begun: string,
  {
    byKeys = false,
    lines = 'one' as 'one' | 'many',
    blank = false,
    more = {} as Partial<Pick<Parameters<typeof TextFace>[0], 'wordless' | 'answers'>>,
  } = {},
) {
  const clock = turnedClock();
  const onText = vi.fn();
  const onTake = vi.fn();
  const onBack = vi.fn();
  render(() => (
    <PressGround now={clock}>
      {(() => {
        if (byKeys) fireEvent.keyDown(window, { key: 'Enter' });
        return (
          <TextFace
            page={LogPage}
            ask="Who gets your bread?"
            detail="A letter will do."
            back="Neighbours"
            most={40}
            care={(text) => (text === 'B' ? 'There is a B.' : undefined)}
            {...{ begun, lines, blank, onText, onTake, onBack, ...more }}
          />
        );
      })()}
    </PressGround>
  ));
  const field = () => screen.getByRole<HTMLInputElement>('textbox');
  const press = (name: string | RegExp): void => {
    clock.at += 1_100;
    tap(screen.getByRole('button', { name }));
  };
  const isBig = () => screen.queryByRole('dialog') !== null;
  return { onText, onTake, onBack, field, press, isBig };
}

it('opens on its letters where nothing stands yet, and takes what they wrote', () => {
  const { isBig, press, onText, onTake, field } = face('');
  expect(isBig()).toBe(true);
  press('B');
  expect(onText).toHaveBeenLastCalledWith('B');
  press('Done');
  expect(isBig()).toBe(false);
  expect(field().value).toBe('B');
  expect(screen.getByText(/There is a.B\./)).toBeTruthy();
  press(/^That’s it/);
  expect(onTake).toHaveBeenCalledExactlyOnceWith('B');
});

it('shows what stands there first, and its letters at a tap on it or on their control', () => {
  const { isBig, press, field, onText } = face('Mill', { lines: 'many' });
  expect(isBig()).toBe(false);
  expect(field().getAttribute('inputmode')).toBe('none');
  fireEvent.click(field());
  expect(isBig()).toBe(true);
  press('Erase');
  press('Done');
  expect(field().value).toBe('Mil');
  press('Big keys');
  press('l');
  expect(onText).toHaveBeenLastCalledWith('Mill');
});

it('gives way to the tablet’s own keys, which stay until its own are wanted again', () => {
  const { isBig, press, field, onTake } = face('');
  press('Tablet’s keys');
  expect(isBig()).toBe(false);
  expect(field().getAttribute('inputmode')).toBe('text');
  expect(document.activeElement).toBe(field());
  fireEvent.click(field());
  expect(isBig()).toBe(false);
  fireEvent.input(field(), { target: { value: ' M of the mill ' } });
  press('Big keys');
  expect(isBig()).toBe(true);
  expect(field().value).toBe(' M of the mill ');
  expect(field().getAttribute('inputmode')).toBe('none');
  press('Done');
  press(/^That’s it/);
  expect(onTake).toHaveBeenCalledExactlyOnceWith('M of the mill');
});

it('lays nothing over the page for who came by a keyboard', () => {
  const { isBig, field, onText, press, onBack, onTake } = face('', { byKeys: true });
  expect(isBig()).toBe(false);
  fireEvent.input(field(), { target: { value: 'R' } });
  expect(onText).toHaveBeenLastCalledWith('R');
  press('Neighbours');
  expect(onBack).toHaveBeenCalledOnce();
  expect(onTake).not.toHaveBeenCalled();
});

it('takes no empty name, and a note may be empty', () => {
  const name = face('');
  name.press('Done');
  name.press(/^That’s it/);
  expect(name.onTake).not.toHaveBeenCalled();
  cleanup();
  const note = face('', { blank: true, lines: 'many' });
  note.press('Done');
  note.press(/^That’s it/);
  expect(note.onTake).toHaveBeenCalledExactlyOnceWith('');
});

it('lays no keys over an answer without words, and takes what answers alone', () => {
  const onPress = vi.fn();
  const wordless = { label: 'Just itself', chosen: false, onPress };
  const { isBig, press, field, onTake } = face('', {
    lines: 'many',
    more: { wordless, answers: (text) => text.includes('m') },
  });
  expect(isBig()).toBe(false);
  press('Just itself');
  expect(onPress).toHaveBeenCalledOnce();
  fireEvent.click(field());
  expect(isBig()).toBe(true);
  press('R');
  press('Done');
  press(/^That’s it/);
  expect(onTake).not.toHaveBeenCalled();
  fireEvent.input(field(), { target: { value: 'malt' } });
  press(/^That’s it/);
  expect(onTake).toHaveBeenCalledExactlyOnceWith('malt');
});
