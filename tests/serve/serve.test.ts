import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { symlink, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { serve, type ServeOptions } from '../../src/serve/serve.ts';
import { ask } from './ask.ts';
import { folder } from './folder.ts';

const SCRIPT = 'console.log("dough");\n'.repeat(200);
const FILES = {
  'index.html': '<!doctype html><title>Loafward</title>' + ' '.repeat(500),
  'sw.js': SCRIPT,
  'assets/main-BxYz12_-.js': SCRIPT,
  'assets/plain.js': 'tiny',
  'icons/any.png': Buffer.from([0x89, 0x50, 0x4e, 0x47]),
  'loafward.webmanifest': '{}',
  'voice/one.mp3': 'sound',
  '.hidden/key.txt': 'secret',
};

async function open(options: Partial<ServeOptions> = {}) {
  const dir = await folder(FILES);
  const served = await serve({ dir, ...options });
  onTestFinished(() => served.close());
  return { ...served, dir };
}

describe('what is sent', () => {
  test.each([
    ['/', 'text/html; charset=utf-8'],
    ['/sw.js', 'text/javascript; charset=utf-8'],
    ['/loafward.webmanifest', 'application/manifest+json; charset=utf-8'],
    ['/icons/any.png', 'image/png'],
    ['/voice/one.mp3', 'audio/mpeg'],
  ])('%s is %s', async (path, type) => {
    const { url } = await open();
    const { status, headers } = await ask(url, path);
    expect(status).toBe(200);
    expect(headers['content-type']).toBe(type);
  });

  test('a script comes packed as the client asks, and unpacks to the same bytes', async () => {
    const { url } = await open();
    const by = (encoding: string) =>
      ask(url, '/sw.js', { headers: { 'Accept-Encoding': encoding } });
    const brotli = await by('gzip, deflate, br');
    expect(brotli.headers['content-encoding']).toBe('br');
    expect(brotliDecompressSync(brotli.body).toString()).toBe(SCRIPT);
    const gzip = await by('gzip;q=1, br;q=0');
    expect(gzip.headers['content-encoding']).toBe('gzip');
    expect(gunzipSync(gzip.body).toString()).toBe(SCRIPT);
    expect(gzip.body.length).toBeLessThan(SCRIPT.length / 4);
    const bare = await by('identity');
    expect(bare.headers['content-encoding']).toBeUndefined();
    expect(bare.body.toString()).toBe(SCRIPT);
    expect(new Set([brotli, gzip, bare].map((r) => r.headers.etag)).size).toBe(3);
    expect(gzip.headers.vary).toBe('Accept-Encoding');
  });

  test('what does not shrink comes as it is', async () => {
    const { url } = await open();
    const packed = { headers: { 'Accept-Encoding': 'gzip, br' } };
    for (const path of ['/icons/any.png', '/assets/plain.js'])
      expect((await ask(url, path, packed)).headers['content-encoding']).toBeUndefined();
  });

  test('only a hashed name is kept for good; pages and the worker are asked for again', async () => {
    const { url } = await open();
    const kept = async (path: string) => (await ask(url, path)).headers['cache-control'];
    expect(await kept('/assets/main-BxYz12_-.js')).toBe('public, max-age=31536000, immutable');
    for (const path of ['/', '/index.html', '/sw.js', '/assets/plain.js', '/icons/any.png'])
      expect(await kept(path)).toBe('no-cache');
  });

  test('a version the client holds is not sent again', async () => {
    const { url } = await open();
    const { headers, body } = await ask(url, '/sw.js');
    expect(body.toString()).toBe(SCRIPT);
    for (const held of [headers.etag, `"other", W/${headers.etag}`, '*']) {
      const again = await ask(url, '/sw.js', { headers: { 'If-None-Match': held } });
      expect(again.status).toBe(304);
      expect(again.body).toHaveLength(0);
    }
    const other = await ask(url, '/sw.js', { headers: { 'If-None-Match': '"other"' } });
    expect(other.status).toBe(200);
  });

  test('HEAD tells the length without the body; other methods are refused', async () => {
    const { url } = await open();
    const head = await ask(url, '/sw.js', { method: 'HEAD' });
    expect(head.headers['content-length']).toBe(String(SCRIPT.length));
    expect(head.body).toHaveLength(0);
    const post = await ask(url, '/', { method: 'POST' });
    expect(post.status).toBe(405);
    expect(post.headers.allow).toBe('GET, HEAD');
  });

  test('a build that changes underneath is not mixed with the one being served', async () => {
    const { url, dir } = await open();
    await writeFile(join(dir, 'sw.js'), 'other');
    expect((await ask(url, '/sw.js')).body.toString()).toBe(SCRIPT);
  });
});

describe('what is refused', () => {
  test.each([
    '/../package.json',
    '/assets/../../package.json',
    '/%2e%2e/package.json',
    '/..%2fpackage.json',
    '/..%5cpackage.json',
    '/a\\..\\b',
    '/index.html%00.png',
    '/%zz',
    'http://elsewhere/package.json',
  ])('%s is malformed', async (path) => {
    const { url } = await open();
    const reply = await ask(url, path);
    expect(reply.status).toBe(400);
    expect(reply.headers['content-security-policy']).toContain("default-src 'self'");
  });

  test('hidden files and links that lead outside do not exist', async () => {
    const { dir } = await open();
    await symlink('/etc/hostname', join(dir, 'host.txt'));
    const served = await serve({ dir });
    onTestFinished(() => served.close());
    for (const path of ['/.hidden/key.txt', '/host.txt', '/assets', '/nothing.js'])
      expect((await ask(served.url, path)).status).toBe(404);
  });

  test('a place inside the app is the app to a browser, a missing file is not', async () => {
    const { url } = await open();
    const walk = { headers: { accept: 'text/html,*/*' } };
    expect((await ask(url, '/bench', walk)).body.toString()).toContain('<title>Loafward');
    expect((await ask(url, '/bench')).status).toBe(404);
    expect((await ask(url, '/gone.html', walk)).status).toBe(404);
  });

  test('the content policy lets nothing in from elsewhere and nothing inline', async () => {
    const { url } = await open();
    const { headers } = await ask(url, '/');
    const policy = new Map(
      String(headers['content-security-policy'])
        .split('; ')
        .map((rule) => {
          const [name = '', ...sources] = rule.split(' ');
          return [name, sources.join(' ')];
        }),
    );
    expect(Object.fromEntries(policy)).toEqual({
      'default-src': "'self'",
      'script-src': "'self' 'wasm-unsafe-eval'",
      'style-src': "'self'",
      'img-src': "'self' data: blob:",
      'media-src': "'self' blob:",
      'connect-src': "'self'",
      'worker-src': "'self'",
      'base-uri': "'none'",
      'form-action': "'none'",
      'frame-ancestors': "'none'",
      'object-src': "'none'",
    });
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['referrer-policy']).toBe('no-referrer');
    for (const name of ['microphone', 'camera', 'bluetooth', 'screen-wake-lock'])
      expect(headers['permissions-policy']).toContain(`${name}=(self)`);
  });
});

describe('the port', () => {
  test('a taken port is passed over for the next free one', async () => {
    const blocker = createServer().listen(0, '127.0.0.1');
    await new Promise((resolve) => blocker.once('listening', resolve));
    onTestFinished(() => void blocker.close());
    const address = blocker.address();
    const taken = typeof address === 'object' && address ? address.port : 0;
    const { url, port } = await open({ port: taken });
    expect(port).toBeGreaterThan(taken);
    expect(port).toBeLessThan(taken + 20);
    expect((await ask(url, '/')).status).toBe(200);
  });

  test('closing frees the port, also under an open connection', async () => {
    const { port, url, close, dir } = await open();
    await fetch(`http://127.0.0.1:${port}`); // leaves a connection open for the next request
    await close();
    await expect(ask(url, '/')).rejects.toThrow('ECONNREFUSED');
    const again = await serve({ dir, port });
    onTestFinished(() => again.close());
    expect(again.port).toBe(port);
  });

  test('a folder that is not there is refused', async () => {
    await expect(serve({ dir: '/nowhere/dist' })).rejects.toThrow('ENOENT');
  });
});
