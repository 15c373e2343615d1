import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal, type JSX } from 'solid-js';
import { afterEach, expect, it, vi } from 'vitest';
import { Caption } from '../../../src/parts/Caption.tsx';

afterEach(cleanup);

const shown = () => screen.getByRole('status').textContent;

it('shows what is said while it is being drawn, and what comes after', async () => {
  const [text, setText] = createSignal('');
  const Page = (): JSX.Element => {
    const caption = <Caption text={text()} seen />;
    // A bench comes late, and its first words with it.
    setText('Read it through.');
    return caption;
  };
  render(() => <Page />);
  await vi.waitFor(() => expect(shown()).toBe('Read it through.'));
  setText('Feed the levain.');
  await vi.waitFor(() => expect(shown()).toBe('Feed the levain.'));
  setText('');
  await vi.waitFor(() => expect(shown()).toBe(''));
});
