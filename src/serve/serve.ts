import { createServer as createPlain, type RequestListener, type Server } from 'node:http';
import { createServer as createSecure } from 'node:https';
import type { AddressInfo } from 'node:net';
import { answer } from './answer.ts';
import { makePage, readSite } from './site.ts';

export interface ServeOptions {
  /** The built folder. */
  readonly dir: string;
  /** Where to listen; when taken, the next free one of twenty. 0 is any free one. Default 0. */
  readonly port?: number;
  /** Default 127.0.0.1: this machine alone. */
  readonly host?: string;
  /** PEM texts. With them the server speaks https. */
  readonly tls?: { readonly key: string; readonly cert: string };
  /** Files beside the folder's own, by path. */
  readonly extra?: Readonly<Record<string, Buffer>>;
}

export interface Served {
  /** `http://localhost:4173`, without a slash at the end. */
  readonly url: string;
  readonly port: number;
  /** Resolves when the port is free again; open connections are cut. */
  close(): Promise<void>;
}

/** How many ports are tried, one after the other. */
const TRIES = 20;

/** Listens; resolves false when the port is taken. */
function listen(server: Server, port: number, host: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const refused = (error: NodeJS.ErrnoException) =>
      error.code === 'EADDRINUSE' ? resolve(false) : reject(error);
    server.once('error', refused);
    server.listen(port, host, () => {
      server.off('error', refused);
      resolve(true);
    });
  });
}

function closeServer(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

/**
 * Serves a built folder until closed.
 *
 * @throws when the folder cannot be read, or twenty ports in a row are taken
 */
export async function serve(options: ServeOptions): Promise<Served> {
  const { port = 0, host = '127.0.0.1', tls } = options;
  const site = new Map(await readSite(options.dir));
  for (const [path, body] of Object.entries(options.extra ?? {}))
    site.set(path, makePage(path, body));

  const listener: RequestListener = (request, response) => {
    const { method = '', url = '', headers } = request;
    const { status, headers: out, body } = answer(site, { method, url, headers });
    response.writeHead(status, out).end(body);
  };
  const server = tls
    ? createSecure({ ...tls, minVersion: 'TLSv1.2' }, listener)
    : createPlain(listener);

  const last = port === 0 ? 0 : Math.min(port + TRIES - 1, 65_535);
  for (let tried = port; tried <= last; tried += 1) {
    if (!(await listen(server, tried, host))) continue;
    const bound = (server.address() as AddressInfo).port;
    return {
      url: `${tls ? 'https' : 'http'}://localhost:${bound}`,
      port: bound,
      close: () => closeServer(server),
    };
  }
  throw new Error(`No port from ${port} to ${last} is free.`);
}
