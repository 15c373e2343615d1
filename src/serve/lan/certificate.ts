import { createPrivateKey, X509Certificate } from 'node:crypto';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { generate } from 'selfsigned';
import type { LanNames } from './names.ts';

/** A certificate and its key, as PEM texts. */
interface Pair {
  readonly cert: string;
  readonly key: string;
}

export interface LanCertificate extends Pair {
  /** The authority to trust, in the binary form that tablets install. */
  readonly authority: Buffer;
  /** SHA-256 of the authority, in pairs of hex digits. */
  readonly fingerprint: string;
}

const DAY = 86_400_000;
/** A tablet trusts the authority once; five years outlive most tablets' place on the counter. */
const AUTHORITY_DAYS = 5 * 365;
/** Apple refuses server certificates longer than 825 days (from memory); a year is enough. */
const SERVER_DAYS = 397;
/** A certificate is made anew this long before it ends. */
const EARLY = 30 * DAY;

/** Where the kept certificates live: outside the project, which may be cloned anew. */
export const lanHome = (env: NodeJS.ProcessEnv = process.env): string =>
  env.LOAFWARD_HOME ?? join(homedir(), '.loafward');

/** A kept pair, or null where it is missing, broken, ending soon or refused by `fits`. */
async function kept(
  home: string,
  name: string,
  now: number,
  fits: (cert: X509Certificate) => boolean,
): Promise<Pair | null> {
  try {
    const cert = await readFile(join(home, `${name}.crt`), 'utf8');
    const key = await readFile(join(home, `${name}.key`), 'utf8');
    const read = new X509Certificate(cert);
    const lasts = Date.parse(read.validTo) - EARLY > now && Date.parse(read.validFrom) <= now;
    return lasts && read.checkPrivateKey(createPrivateKey(key)) && fits(read)
      ? { cert, key }
      : null;
  } catch {
    return null; // nothing kept, or not readable as what it should be: it is made anew
  }
}

/** Writes a pair so that only this user can read the key; a half-written file is never left. */
async function keep(home: string, name: string, pair: Pair): Promise<void> {
  await mkdir(home, { recursive: true, mode: 0o700 });
  for (const [ending, text] of [
    ['key', pair.key],
    ['crt', pair.cert],
  ] as const) {
    const file = join(home, `${name}.${ending}`);
    await writeFile(`${file}.new`, text, { mode: 0o600 });
    await rename(`${file}.new`, file);
  }
}

async function makeAuthority(now: number): Promise<Pair> {
  const made = await generate([{ name: 'commonName', value: 'Loafward kitchen authority' }], {
    keyType: 'ec',
    curve: 'P-256',
    algorithm: 'sha256',
    notBeforeDate: new Date(now - DAY),
    notAfterDate: new Date(now + AUTHORITY_DAYS * DAY),
    extensions: [
      { name: 'basicConstraints', cA: true, pathLenConstraint: 0, critical: true },
      { name: 'keyUsage', keyCertSign: true, cRLSign: true, critical: true },
    ],
  });
  return { cert: made.cert, key: made.private };
}

async function makeServer(names: LanNames, authority: Pair, now: number): Promise<Pair> {
  const made = await generate([{ name: 'commonName', value: 'Loafward' }], {
    keyType: 'ec',
    curve: 'P-256',
    algorithm: 'sha256',
    notBeforeDate: new Date(now - DAY),
    notAfterDate: new Date(now + SERVER_DAYS * DAY),
    ca: authority,
    extensions: [
      { name: 'basicConstraints', cA: false, critical: true },
      { name: 'keyUsage', digitalSignature: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      {
        name: 'subjectAltName',
        altNames: [
          ...names.hosts.map((value) => ({ type: 2 as const, value })),
          ...names.ips.map((ip) => ({ type: 7 as const, ip })),
        ],
      },
    ],
  });
  return { cert: made.cert, key: made.private };
}

/**
 * The certificate for these names, kept in `home` and used again while it covers them all and
 * has a month left. The authority behind it is kept longer, so that a tablet trusts it once.
 *
 * @throws when `home` cannot be written
 */
export async function lanCertificate(
  names: LanNames,
  home: string,
  now: number,
): Promise<LanCertificate> {
  let authority = await kept(home, 'authority', now, (cert) => cert.ca);
  if (!authority) await keep(home, 'authority', (authority = await makeAuthority(now)));
  const root = new X509Certificate(authority.cert);

  const covers = (cert: X509Certificate) =>
    cert.verify(root.publicKey) &&
    names.hosts.every((host) => cert.checkHost(host) !== undefined) &&
    names.ips.every((ip) => cert.checkIP(ip) !== undefined);
  let server = await kept(home, 'server', now, covers);
  if (!server) await keep(home, 'server', (server = await makeServer(names, authority, now)));

  return { ...server, authority: root.raw, fingerprint: root.fingerprint256 };
}
