import { request as plain, type IncomingHttpHeaders } from 'node:http';
import { request as secure, type RequestOptions } from 'node:https';
import type { TLSSocket } from 'node:tls';

export interface Reply {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
  /** Over https: whether the certificate held against `ca`. */
  readonly authorized: boolean | null;
}

/** One request with its path exactly as written: `fetch` would tidy `..` away. A bare machine may not
 * know the name localhost, which browsers know by themselves. */
export function ask(url: string, path: string, options: RequestOptions = {}): Promise<Reply> {
  const { protocol, hostname, port } = new URL(url);
  const send = protocol === 'https:' ? secure : plain;
  return new Promise((resolve, reject) => {
    const request = send(
      {
        hostname: hostname === 'localhost' ? '127.0.0.1' : hostname,
        port,
        path,
        agent: false,
        ...(protocol === 'https:' && hostname === 'localhost' ? { servername: hostname } : {}),
        ...options,
      },
      (response) => {
        const chunks: Buffer[] = [];
        const authorized = (response.socket as TLSSocket).authorized ?? null;
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () =>
          resolve({
            status: response.statusCode ?? 0,
            headers: response.headers,
            body: Buffer.concat(chunks),
            authorized,
          }),
        );
      },
    );
    request.on('error', reject);
    request.end();
  });
}
