import { createRoot } from 'solid-js';
import { expect, it } from 'vitest';
import { makeTold } from '../../src/app/told.ts';

const open = () =>
  createRoot(() =>
    makeTold({
      store: () => null,
      unsaved: () => 0,
      clockBack: () => false,
      holds: true,
      free: () => true,
      offer: () => null,
      baking: () => true,
      soundless: () => false,
      voiceLost: () => false,
      secure: true,
      saveAsFile: () => undefined,
      reload: () => undefined,
    }),
  );

it('lets what asks for nothing be closed, and tells it again when it happens again', () => {
  const { told, tell } = open();
  tell({ id: 'log', text: 'Row 3.', action: null });
  expect(told().map(({ text }) => text)).toEqual(['Row 3.']);
  told()[0]!.action!.press();
  expect(told()).toEqual([]);
  tell({ id: 'log', text: 'Row 9.', action: null });
  expect(told().map(({ text }) => text)).toEqual(['Row 9.']);
});

it('leaves what a press is offered for as it is', () => {
  const { told, tell } = open();
  const action = { label: 'Save as a file', press: () => undefined };
  tell({ id: 'log', text: 'Row 3.', action });
  expect(told()[0]!.action).toBe(action);
});
