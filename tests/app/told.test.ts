import { createRoot, createSignal } from 'solid-js';
import { expect, it } from 'vitest';
import type { StoreTrouble } from '../../machines/ports.ts';
import { makeTold, type ToldParts } from '../../src/app/told.ts';

const open = (parts: Partial<ToldParts> = {}) =>
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
      misread: null,
      saveAsFile: () => undefined,
      reload: () => undefined,
      ...parts,
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

it('offers a file of what is in memory alone once, and anew for five presses more, or for another time', () => {
  const [unsaved, setUnsaved] = createSignal(1);
  const [store, setStore] = createSignal<StoreTrouble | null>('full');
  let files = 0;
  const { told } = open({ store, unsaved, saveAsFile: () => void (files += 1) });
  const offered = () => told().map(({ id }) => id);
  expect(offered()).toEqual(['store']);
  told()[0]!.action!.press();
  // It is out of the way of the other bakes, which it lay over.
  expect([files, offered()]).toEqual([1, []]);
  setUnsaved(5);
  expect(offered()).toEqual([]);
  setUnsaved(6);
  expect(offered()).toEqual(['store']);
  told()[0]!.action!.press();
  expect([files, offered()]).toEqual([2, []]);
  setStore(null);
  setUnsaved(0);
  for (const trouble of ['gone', 'full'] as const) {
    setStore(trouble);
    setUnsaved(1);
    expect(offered()).toEqual(['store']);
    told()[0]!.action!.press();
    expect(offered()).toEqual([]);
    setUnsaved(0);
  }
});
