import { render } from 'solid-js/web';
import { Dynamic } from 'solid-js/web';
import '../../../src/parts/tokens.css';
import { scenes } from './scenes.tsx';

/** ?scene=act&theme=dark&hands=left&text=bigger shows one scene of the parts on the whole page. */
const asked = new URLSearchParams(location.search);
for (const name of ['theme', 'hands', 'text']) {
  const value = asked.get(name);
  if (value) document.documentElement.dataset[name] = value;
}
const scene = scenes[asked.get('scene') ?? 'act'];
if (!scene) throw new Error(`The gallery has no scene "${asked.get('scene')}".`);
render(() => <Dynamic component={scene} />, document.body);
