import { hostname, networkInterfaces } from 'node:os';

/** What this computer is called on its network. */
export interface LanNames {
  /** IPv4 addresses, the likeliest for a home network first. Empty: no network. */
  readonly addresses: readonly string[];
  /** Every name and address a certificate should cover, this machine's own included. */
  readonly hosts: readonly string[];
  readonly ips: readonly string[];
}

type Interfaces = ReturnType<typeof networkInterfaces>;

/** Networks inside the machine (containers, tunnels): a tablet can't reach them. */
const INSIDE = /^(docker|veth|br-|virbr|vmnet|vboxnet|tun|tap|utun|wg)/i;

const rank = (address: string) =>
  address.startsWith('192.168.') ? 0 : address.startsWith('10.') ? 1 : 2;

/** Reads the network interfaces; link-local addresses, which change by themselves, are left out. */
export function lanNames(
  interfaces: Interfaces = networkInterfaces(),
  host: string = hostname(),
): LanNames {
  const outward = Object.entries(interfaces)
    .filter(([name]) => !INSIDE.test(name))
    .flatMap(([, list]) => list ?? [])
    .filter(({ internal, address }) => !internal && !/^(169\.254\.|fe80:)/i.test(address));
  const addresses = outward
    .filter(({ family }) => family === 'IPv4')
    .map(({ address }) => address)
    .sort((a, b) => rank(a) - rank(b));
  const others = outward.filter(({ family }) => family === 'IPv6').map(({ address }) => address);
  const name = host.toLowerCase();
  const named = !/^[a-z0-9.-]+$/.test(name)
    ? []
    : name.includes('.')
      ? [name]
      : [name, `${name}.local`];
  return {
    addresses,
    hosts: [...new Set(['localhost', ...named])],
    ips: [...new Set(['127.0.0.1', '::1', ...addresses, ...others])],
  };
}
