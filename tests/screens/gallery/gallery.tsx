import { render } from 'solid-js/web';
import { Dynamic } from 'solid-js/web';
import '../../../src/parts/tokens.css';
import { All } from './all.tsx';
import { scenes } from './scenes.tsx';

/**
 * ?scene=act&theme=dark&hands=left&text=bigger shows one scene of the parts on the whole page; without
 * a scene all of them are shown.
 */
const asked = new URLSearchParams(location.search);
for (const name of ['theme', 'hands', 'text']) {
  const value = asked.get(name);
  if (value) document.documentElement.dataset[name] = value;
}
const name = asked.get('scene');
const scene = name === null ? All : scenes[name];
if (!scene) throw new Error(`The gallery has no scene "${name}".`);
render(() => <Dynamic component={scene} />, document.body);
