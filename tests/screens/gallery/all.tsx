import { For, type JSX } from 'solid-js';
import { scenes } from './scenes.tsx';
import './all.css';

const WAYS = ['theme=light', 'theme=dark', 'theme=light&hands=left', 'theme=light&text=bigger'];

/** Every scene in both themes, for both hands and in bigger words, each in a tablet of its own. */
export const All = (): JSX.Element => (
  <main>
    <For each={Object.keys(scenes)}>
      {(scene) => (
        <section>
          <h1>{scene}</h1>
          <div class="row">
            <For each={WAYS}>
              {(way) => (
                <div class="tablet">
                  <iframe
                    loading="lazy"
                    title={`${scene}, ${way}`}
                    src={`?scene=${scene}&${way}`}
                  />
                </div>
              )}
            </For>
          </div>
        </section>
      )}
    </For>
  </main>
);
