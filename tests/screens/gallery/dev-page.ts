import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** `/parts.html` under `npm run dev`: all parts in all states. It is no part of any build. */
export const partsPage = (): Plugin => ({
  name: 'parts-page',
  apply: 'serve',
  configureServer(server) {
    server.middlewares.use((req, res, next) => {
      const url = req.url ?? '';
      if (!/^\/parts\.html(\?|$)/.test(url)) return next();
      const send = async () => {
        const page = await readFile(here('./index.html'), 'utf8');
        res.setHeader('content-type', 'text/html');
        res.end(
          await server.transformIndexHtml(
            url,
            page.replace('./gallery.tsx', `/@fs${here('./gallery.tsx')}`),
          ),
        );
      };
      send().catch(next);
    });
  },
});
