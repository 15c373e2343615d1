import { X509Certificate } from 'node:crypto';
import { readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { checkServerIdentity, connect } from 'node:tls';
import { describe, expect, onTestFinished, test } from 'vitest';
import { lanCertificate } from '../../src/serve/lan/certificate.ts';
import { lanNames } from '../../src/serve/lan/names.ts';
import { AUTHORITY_PATH, lanWords, qr } from '../../src/serve/lan/words.ts';
import { serve } from '../../src/serve/serve.ts';
import { ask } from './ask.ts';
import { folder } from './folder.ts';
import { readQr } from './read-qr.ts';

const NOW = Date.now();
const DAY = 86_400_000;
const NAMES = {
  addresses: ['192.168.7.20'],
  hosts: ['localhost', 'counter', 'counter.local'],
  ips: ['127.0.0.1', '::1', '192.168.7.20'],
};

const pem = (der: Buffer) => new X509Certificate(der).toString();

describe('the certificate', () => {
  test('is good for every name and address, as a TLS client sees it, and for no other', async () => {
    const made = await lanCertificate(NAMES, await folder(), NOW);
    const dir = await folder({ 'index.html': 'app' });
    const served = await serve({ dir, tls: made, extra: { [AUTHORITY_PATH]: made.authority } });
    onTestFinished(() => served.close());
    const as = (name: string) =>
      new Promise<string>((resolve) => {
        const socket = connect({
          port: served.port,
          host: '127.0.0.1',
          ca: pem(made.authority),
          // Node's own check, against the name a tablet would have typed.
          checkServerIdentity: (_, cert) => checkServerIdentity(name, cert),
        });
        socket.once('secureConnect', () => {
          resolve(socket.authorized ? 'trusted' : String(socket.authorizationError));
          socket.destroy();
        });
        socket.once('error', (error) => resolve(error.message));
      });
    for (const name of [...NAMES.hosts, ...NAMES.ips]) expect(await as(name)).toBe('trusted');
    for (const name of ['elsewhere', '192.168.7.21'])
      expect(await as(name)).toMatch(/altnames|cert's list/);
  });

  test('verifies over https with the authority, and is refused without it', async () => {
    const made = await lanCertificate(NAMES, await folder(), NOW);
    const dir = await folder({ 'index.html': 'app' });
    const served = await serve({ dir, tls: made, extra: { [AUTHORITY_PATH]: made.authority } });
    onTestFinished(() => served.close());
    expect(served.url).toMatch(/^https:\/\/localhost:\d+$/);
    const reply = await ask(served.url, '/', { ca: pem(made.authority) });
    expect(reply).toMatchObject({ status: 200, authorized: true });
    expect(reply.headers['content-security-policy']).toContain("default-src 'self'");
    await expect(ask(served.url, '/')).rejects.toThrow(/certificate/);

    const handed = await ask(served.url, AUTHORITY_PATH, { ca: pem(made.authority) });
    expect(handed.headers['content-type']).toBe('application/x-x509-ca-cert');
    expect(new X509Certificate(handed.body).fingerprint256).toBe(made.fingerprint);
  });

  test('the authority can sign, the server can not, and neither lasts too long', async () => {
    const made = await lanCertificate(NAMES, await folder(), NOW);
    const root = new X509Certificate(made.authority);
    const leaf = new X509Certificate(made.cert);
    expect([root.ca, leaf.ca]).toEqual([true, false]);
    expect(leaf.verify(root.publicKey)).toBe(true);
    expect((Date.parse(leaf.validTo) - NOW) / DAY).toBeLessThan(825);
    expect((Date.parse(leaf.validTo) - NOW) / DAY).toBeGreaterThan(300);
  });

  test('is kept: a second start has the same one, and only this user can read the keys', async () => {
    const home = join(await folder(), 'kept');
    const first = await lanCertificate(NAMES, home, NOW);
    expect(await lanCertificate(NAMES, home, NOW + DAY)).toEqual(first);
    for (const file of ['authority.key', 'server.key'])
      expect((await stat(join(home, file))).mode & 0o077).toBe(0);
  });

  test('a new address gets a new certificate from the same authority', async () => {
    const home = await folder();
    const first = await lanCertificate(NAMES, home, NOW);
    const moved = { ...NAMES, ips: [...NAMES.ips, '10.0.0.9'] };
    const second = await lanCertificate(moved, home, NOW);
    expect(second.fingerprint).toBe(first.fingerprint);
    expect(second.cert).not.toBe(first.cert);
    expect(new X509Certificate(second.cert).checkIP('10.0.0.9')).toBe('10.0.0.9');
  });

  test('one that ends within a month is made anew, from the same authority', async () => {
    const home = await folder();
    const first = await lanCertificate(NAMES, home, NOW);
    const soon = await lanCertificate(NAMES, home, NOW + 360 * DAY);
    expect(await lanCertificate(NAMES, home, NOW + 380 * DAY)).not.toMatchObject({
      cert: first.cert,
    });
    expect(soon.cert).toBe(first.cert);
    expect(soon.fingerprint).toBe(first.fingerprint);
  });

  test('a broken file, or a key of another pair, is replaced', async () => {
    const home = await folder();
    const first = await lanCertificate(NAMES, home, NOW);
    const key = await readFile(join(home, 'authority.key'));
    await writeFile(join(home, 'server.key'), key);
    const second = await lanCertificate(NAMES, home, NOW);
    expect(second.cert).not.toBe(first.cert);
    await writeFile(join(home, 'authority.crt'), 'torn');
    const third = await lanCertificate(NAMES, home, NOW);
    expect(third.fingerprint).not.toBe(first.fingerprint);
    expect(
      new X509Certificate(third.cert).verify(new X509Certificate(third.authority).publicKey),
    ).toBe(true);
  });
});

describe('the names', () => {
  const on = (address: string, family: 'IPv4' | 'IPv6' = 'IPv4', internal = false) =>
    ({ address, family, internal, netmask: '', mac: '', cidr: null, scopeid: 0 }) as never;

  test('home networks come first; loopback, link-local and container networks are left out', () => {
    const names = lanNames(
      {
        lo: [on('127.0.0.1', 'IPv4', true)],
        docker0: [on('172.17.0.1')],
        eth0: [on('10.1.2.3'), on('169.254.3.4'), on('fe80::1', 'IPv6'), on('fd00::5', 'IPv6')],
        wlan0: [on('192.168.7.20')],
      },
      'Counter',
    );
    expect(names).toEqual({
      addresses: ['192.168.7.20', '10.1.2.3'],
      hosts: ['localhost', 'counter', 'counter.local'],
      ips: ['127.0.0.1', '::1', '192.168.7.20', '10.1.2.3', 'fd00::5'],
    });
  });

  test('a name that no certificate can carry is left out', () => {
    expect(lanNames({}, 'Küche, oben').hosts).toEqual(['localhost']);
    expect(lanNames({}, 'a.example').hosts).toEqual(['localhost', 'a.example']);
  });
});

describe('what is printed', () => {
  test.each(['https://10.0.0.4:4173', 'https://192.168.178.123:4179', 'https://10.1.2.3:65535'])(
    'the drawn code of %s reads back as that address',
    (url) => {
      expect(readQr(qr(url))).toBe(url);
    },
  );

  test('the reader that checks the codes notices a changed module', () => {
    const drawn = qr('https://10.0.0.4:4173').split('\n');
    const line = drawn.length - 3;
    const changed = [...(drawn[line] ?? '')];
    // Data lies at the lower right; the two outermost columns are border.
    const at = changed.length - 3;
    changed[at] = changed[at] === '\u2588' ? ' ' : '\u2588';
    drawn[line] = changed.join('');
    let read: string;
    try {
      read = readQr(drawn.join('\n'));
    } catch {
      read = 'refused';
    }
    expect(read).not.toBe('https://10.0.0.4:4173');
  });

  test('says the address, how to trust it on both tablets, the risk and what http loses', () => {
    const url = 'https://192.168.7.20:4173';
    const words = lanWords({
      url,
      others: ['https://10.1.2.3:4173'],
      fingerprint: 'AB:CD',
      home: '/home/baker/.loafward',
    });
    for (const part of [
      `  ${url}\n  https://10.1.2.3:4173\n`,
      qr(url),
      `${url}/loafward-authority.crt`,
      'Android tablet:',
      'iPad:',
      'AB:CD',
      '/home/baker/.loafward',
      'Why not plain http?',
      'no service\nworker',
      'screen awake',
      'second tab',
      'when space runs short',
    ])
      expect(words).toContain(part);
    for (const line of words.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });
});
