import { render } from '@solidjs/testing-library';
import { expect, it, vi } from 'vitest';
import { STAGES, stageScenes } from './gallery/stage-scenes.tsx';

const CALLS = ['task', 'warm look', 'lid'].map((name) => `stage: ${name}`);

it.each(Object.keys(STAGES))('the scene “%s” opens its log at its act', async (name) => {
  vi.stubGlobal('fetch', () => Promise.resolve(new Response('', { status: 404 })));
  const Scene = stageScenes[name]!;
  const { container } = render(() => <Scene />);
  await vi.waitFor(
    () => expect(container.querySelector('.act-headline')?.textContent).toMatch(/\w/),
    { timeout: 10_000 },
  );
  expect(container.textContent).not.toMatch(/undefined|NaN|\{\w+\}/);
  // A timer comes as a chunk of its own, a little after the bench, and brings its own call.
  if (name.startsWith('stage: timer'))
    await vi.waitFor(() => expect(container.textContent).toMatch(/\bNuts\b/), { timeout: 10_000 });
  else expect(container.querySelector('.call') !== null).toBe(CALLS.includes(name));
});
