import type { IncomingHttpHeaders } from 'node:http';
import { STRICT_HEADERS } from './headers.ts';
import type { Packing, Page, Site } from './site.ts';

export interface Question {
  readonly method: string;
  /** As it came, undecoded: `/a/b?c`. */
  readonly url: string;
  readonly headers: IncomingHttpHeaders;
}

export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer;
}

/** Files whose name carries a hash of their content never change. */
const HASHED = /^\/assets\/.+-[\w-]{8}\.[a-z0-9]+$/;

function plain(status: number, sentence: string, headers: Record<string, string> = {}): Answer {
  const body = Buffer.from(`${sentence}\n`);
  return {
    status,
    body,
    headers: {
      ...STRICT_HEADERS,
      'Content-Type': 'text/plain; charset=utf-8',
      'Content-Length': String(body.length),
      'Cache-Control': 'no-store',
      ...headers,
    },
  };
}

/** The path asked for, decoded; null where it is malformed or tries to climb. */
function pathOf(url: string): string | null {
  const raw = url.split(/[?#]/, 1)[0] ?? '';
  let path: string;
  try {
    path = decodeURIComponent(raw);
  } catch {
    return null;
  }
  const climbs = path.split('/').some((part) => part === '..' || part === '.');
  return path.startsWith('/') && !climbs && !/[\0\\]/.test(path) ? path : null;
}

/** The packings a client takes, the tightest first. A quality of 0 is a refusal. */
function packingsOf(header: string | undefined): Packing[] {
  const offered = new Map(
    (header ?? '').split(',').map((part) => {
      const [name = '', quality = ''] = part
        .trim()
        .toLowerCase()
        .split(/\s*;\s*q=/);
      return [name, quality === '' ? 1 : Number(quality)];
    }),
  );
  const takes = (how: Packing) => (offered.get(how) ?? offered.get('*') ?? 0) > 0;
  return (['br', 'gzip'] as const).filter(takes);
}

/** Whether the client holds this version already. */
function isHeld(header: string | undefined, etag: string): boolean {
  const held = (header ?? '').split(',').map((part) => part.trim().replace(/^W\//, ''));
  return held.includes(etag) || held.includes('*');
}

function send(page: Page, path: string, question: Question): Answer {
  let body = page.body;
  let packing: Packing | null = null;
  for (const how of packingsOf(String(question.headers['accept-encoding'] ?? ''))) {
    const packed = page.packed(how);
    if (!packed) continue;
    [body, packing] = [packed, how];
    break;
  }
  const etag = packing ? `"${page.hash}-${packing}"` : `"${page.hash}"`;
  const headers: Record<string, string> = {
    ...STRICT_HEADERS,
    'Cache-Control': HASHED.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache',
    ETag: etag,
    Vary: 'Accept-Encoding',
  };
  if (isHeld(question.headers['if-none-match'], etag))
    return { status: 304, headers, body: Buffer.alloc(0) };
  headers['Content-Type'] = page.type;
  headers['Content-Length'] = String(body.length);
  if (packing) headers['Content-Encoding'] = packing;
  return { status: 200, headers, body };
}

/**
 * The answer to one request; for HEAD the caller leaves the body out. A path without an ending that
 * a browser walks to is the app.
 */
export function answer(site: Site, question: Question): Answer {
  if (question.method !== 'GET' && question.method !== 'HEAD')
    return plain(405, 'This server only hands out files.', { Allow: 'GET, HEAD' });
  const path = pathOf(question.url);
  if (path === null) return plain(400, 'This address is malformed.');
  const asked = path === '/' ? '/index.html' : path;
  const page = site.get(asked);
  if (page) return send(page, asked, question);
  const isWalk = !/\.[^/]*$/.test(path) && /text\/html/.test(question.headers.accept ?? '');
  const app = site.get('/index.html');
  return isWalk && app ? send(app, '/index.html', question) : plain(404, 'There is no such file.');
}
