import { render } from '@solidjs/testing-library';
import { expect, it, vi } from 'vitest';
import { STAGES, stageScenes } from './gallery/stage-scenes.tsx';

/** The first to ask for a chunk waits for its compiling: in a whole run that is long. */
const LONG = 30_000;
const CALLS = ['task', 'warm look', 'lid'].map((name) => `stage: ${name}`);

it.each(Object.keys(STAGES))(
  'the scene “%s” opens its log at its act',
  async (name) => {
    vi.stubGlobal('fetch', () => Promise.resolve(new Response('', { status: 404 })));
    const Scene = stageScenes[name]!;
    const { container } = render(() => <Scene />);
    await vi.waitFor(
      () => expect(container.querySelector('.act-headline')?.textContent).toMatch(/\w/),
      { timeout: LONG },
    );
    expect(container.textContent).not.toMatch(/undefined|NaN|\{\w+\}/);
    expect(container.querySelector('.call') !== null).toBe(CALLS.includes(name));
  },
  3 * LONG,
);
