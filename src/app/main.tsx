import { render } from 'solid-js/web';

render(() => <main>Loafward</main>, document.body);
