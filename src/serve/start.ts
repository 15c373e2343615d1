import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { lanCertificate, lanHome } from './lan/certificate.ts';
import { lanNames } from './lan/names.ts';
import { AUTHORITY_PATH, lanWords } from './lan/words.ts';
import { serve, type Served } from './serve.ts';

/** Where it listens when nothing else is asked for. */
export const USUAL_PORT = 4173;

/** The command line and its surroundings. */
export interface Call {
  /** What was written after `npm start --`. */
  readonly args: readonly string[];
  readonly env: NodeJS.ProcessEnv;
  /** The built folder. */
  readonly dir: string;
  readonly now: number;
  readonly print: (words: string) => void;
}

/** The port asked for by PORT, or the usual one. 0 is any free one. */
function wantedPort(env: NodeJS.ProcessEnv): number {
  if (env.PORT === undefined || env.PORT === '') return USUAL_PORT;
  const port = Number(env.PORT);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
  throw new Error(`PORT must be a whole number from 0 to 65535, not "${env.PORT}".`);
}

/** A log belongs to an address, port included: a moved server shows an empty kitchen. */
const moved = (wanted: number, got: number) =>
  wanted === 0 || wanted === got
    ? ''
    : `Port ${wanted} is taken, so this is port ${got}. A browser keeps a log of its own for\n` +
      `each address: for your usual log, stop what holds port ${wanted} and start again.\n`;

async function openToNetwork(call: Call, port: number): Promise<Served> {
  const names = lanNames();
  const [first, ...rest] = names.addresses;
  if (first === undefined)
    throw new Error('This computer has no address on a network. Join one, or leave out --lan.');
  const home = lanHome(call.env);
  const { key, cert, authority, fingerprint } = await lanCertificate(names, home, call.now);
  const served = await serve({
    dir: call.dir,
    port,
    host: names.ips.some((ip) => ip !== '::1' && ip.includes(':')) ? '::' : '0.0.0.0',
    tls: { key, cert },
    extra: { [AUTHORITY_PATH]: authority },
  });
  const at = (host: string) => `https://${host}:${served.port}`;
  call.print(lanWords({ url: at(first), others: rest.map(at), fingerprint, home }));
  return { ...served, url: at(first) };
}

async function openHere(call: Call, port: number): Promise<Served> {
  const served = await serve({ dir: call.dir, port });
  call.print(
    `Loafward is open on this computer: ${served.url}\n` +
      `For a tablet on your network, start it with: npm start -- --lan\nStop it with Ctrl+C.`,
  );
  return served;
}

/**
 * Starts the server as the command line asks and prints where it is.
 *
 * @throws a plain sentence when the arguments, the build, the port or the network are not right
 */
export async function start(call: Call): Promise<Served> {
  const { values } = parseArgs({
    args: [...call.args],
    options: { lan: { type: 'boolean', default: false } },
  });
  if (!existsSync(join(call.dir, 'index.html')))
    throw new Error(`There is no built app in ${call.dir}: run npm start, which builds it first.`);
  const wanted = wantedPort(call.env);
  const served = await (values.lan ? openToNetwork : openHere)(call, wanted);
  const note = moved(wanted, served.port);
  if (note) call.print(note);
  return served;
}
