import { render } from 'solid-js/web';
import { makeUpdate } from '../adapters/update.ts';

const mount = document.getElementById('loafward');
if (!mount) throw new Error('The page has no element with the id loafward.');

makeUpdate();
mount.replaceChildren();
render(() => <main>Loafward</main>, mount);
