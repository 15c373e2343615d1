import { expect } from 'vitest';
import { VIEWPORTS, type App, type ViewportName } from '../../browser/harness/open-app.ts';
import { settled } from '../../browser/harness/settled.ts';
import { contact } from './contact.ts';
import type { Slice } from './slices.ts';

export type Theme = Slice['theme'];

/** On every tablet, or in the dark on one. */
const viewsOf = (theme: Theme): readonly ViewportName[] =>
  theme === 'dark' ? ['wide'] : (Object.keys(VIEWPORTS) as ViewportName[]);

/** Photographs a child's view on all tablets, and notes where its words are longer than their place. */
export function childCamera(app: App, name: string, theme: Theme) {
  const cameras = viewsOf(theme).map((view) => ({
    view,
    ...contact(app, name, { view, theme }),
  }));
  const long: string[] = [];
  /** How many px of it are out of sight, before what reads on takes of its width; 0 where it is whole. */
  const beyond = async (text: 'plain' | 'bigger'): Promise<number> => {
    await app.page.evaluate((t) => (document.documentElement.dataset['text'] = t), text);
    await settled(app.page);
    return app.page.evaluate(() => {
      const box = document.querySelector('.bench-words[data-long]');
      box?.removeAttribute('data-long');
      const px = box ? box.scrollHeight - box.clientHeight : 0;
      box?.setAttribute('data-long', '');
      return px;
    });
  };
  return {
    async shoot(state: string): Promise<void> {
      for (const { view, shoot } of cameras) {
        await app.setViewport(view);
        for (const text of ['bigger', 'plain'] as const) {
          const px = await beyond(text);
          if (px > 0) long.push(`${view}, ${text}: ${state}, ${px} px`);
        }
        await shoot(state);
      }
      await app.setViewport('wide');
    },
    async lay(): Promise<void> {
      for (const { lay } of cameras) await lay();
    },
    /** In plain words a wide tablet shows all of it at once; but for the plan, whose own press reads it on. */
    expectWhole(): void {
      console.log(
        long
          .filter((one) => one.includes('plain'))
          .toSorted()
          .join('\n'),
      );
      expect(
        long.filter((one) => one.startsWith('wide, plain') && !one.includes('read-plan')),
      ).toEqual([]);
    },
  };
}
