import { cleanup, screen } from '@solidjs/testing-library';
import { afterEach, expect, it, vi } from 'vitest';
import { de } from '../../../src/core/speech/de.ts';
import { fr } from '../../../src/core/speech/fr.ts';
import { bulk as english } from '../../../src/core/speech/words/bulk.ts';
import { bulk as german } from '../../../src/core/speech/de/bulk.ts';
import { bulk as french } from '../../../src/core/speech/fr/bulk.ts';
import { speakIn } from '../../../src/core/speech/tongue.ts';
import { onBench } from './on-bench.tsx';

afterEach(() => {
  cleanup();
  speakIn('en');
  vi.unstubAllGlobals();
});

const SPREAD = 'bulk.spread';

it.each([
  ['de', de, german],
  ['fr', fr, french],
] as const)(
  'shows a bench in %s: its act, its press, its caution',
  async (tongue, words, bulk) => {
    const { headline } = english[SPREAD];
    speakIn(tongue, words);
    await onBench(SPREAD, { spoken: false });
    await screen.findByRole('heading', { name: bulk[SPREAD].headline }, { timeout: 10_000 });
    expect(screen.getByRole('button', { name: new RegExp(bulk[SPREAD].slab) })).toBeTruthy();
    expect(document.body.textContent).toContain(bulk[SPREAD].detail);
    expect(document.body.textContent).not.toContain(headline);
  },
  30_000,
);
