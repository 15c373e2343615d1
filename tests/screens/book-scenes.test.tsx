import { render } from '@solidjs/testing-library';
import { expect, it, vi } from 'vitest';
import { bookScenes } from './gallery/book-scenes.tsx';

it.each(Object.keys(bookScenes))(
  'the scene “%s” opens its page of the Book',
  async (name) => {
    vi.stubGlobal('fetch', () => Promise.resolve(new Response('', { status: 404 })));
    const Scene = bookScenes[name]!;
    const { container } = render(() => <Scene />);
    const shown = () => container.querySelector('.act-headline')?.textContent ?? '';
    await vi.waitFor(() => expect(shown()).toMatch(/\w/), 20_000);
    expect(container.querySelectorAll('.slab')).toHaveLength(1);
    expect(container.textContent).not.toMatch(/undefined|NaN|\{\w+\}/);
    const pictured = /^book: (list|picture|unusual|formula with)/.test(name);
    expect(container.querySelector('img') !== null).toBe(pictured);
    expect(container.querySelector('.book-warnings') !== null).toBe(name === 'book: unusual');
  },
  30_000,
);
