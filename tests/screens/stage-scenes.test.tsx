import { render } from '@solidjs/testing-library';
import { beforeAll, expect, it, vi } from 'vitest';
import { STAGES, stageScenes } from './gallery/stage-scenes.tsx';

const CALLS = ['task', 'task, spoils', 'timer calls', 'warm look', 'lid'].map(
  (name) => `stage: ${name}`,
);

// The first to ask for a chunk waits for its compiling, in a whole run longer than a test may take.
beforeAll(
  () =>
    Promise.all([
      import('../../src/screens/bench/Bench.tsx'),
      import('../../src/screens/bench/question-view.ts'),
      import('../../src/screens/bench/measured-view.ts'),
      import('../../src/app/OverAll.tsx'),
    ]),
  120_000,
);

it.each(Object.keys(STAGES))(
  'the scene “%s” opens its log at its act',
  async (name) => {
    vi.stubGlobal('fetch', () => Promise.resolve(new Response('', { status: 404 })));
    const Scene = stageScenes[name]!;
    const { container } = render(() => <Scene />);
    const shown = () => ({
      headline: /\w/.test(container.querySelector('.act-headline')?.textContent ?? ''),
      overAll: container.querySelector('.notices') !== null,
    });
    await vi.waitFor(() => expect(shown()).toEqual({ headline: true, overAll: true }), 20_000);
    expect(container.textContent).not.toMatch(/undefined|NaN|\{\w+\}/);
    expect(container.querySelector('.call') !== null).toBe(CALLS.includes(name));
    const timer = name.startsWith('stage: timer') ? 'Nuts' : undefined;
    expect(container.querySelector('.timers-press span span')?.textContent).toBe(timer);
  },
  30_000,
);
