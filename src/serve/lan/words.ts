import { renderUnicodeCompact } from 'uqr';

/** Where the authority is handed out. */
export const AUTHORITY_PATH = '/loafward-authority.crt';

export interface LanAddress {
  /** The address to open on the tablet. */
  readonly url: string;
  /** Further addresses of the same server. */
  readonly others: readonly string[];
  readonly fingerprint: string;
  /** The folder that keeps the keys. */
  readonly home: string;
}

/** The QR code for a text, as block characters: full blocks are white, for a dark terminal. */
export const qr = (text: string): string => renderUnicodeCompact(text, { border: 2 });

/** What is printed when the server is open to the network. Menu names are from memory. */
export function lanWords({ url, others, fingerprint, home }: LanAddress): string {
  return `
Loafward is open to your network:

  ${url}
${others.map((other) => `  ${other}\n`).join('')}
${qr(url)}

Once for each tablet: make it trust this computer.

1. On the tablet open ${url}${AUTHORITY_PATH}
   It warns that the connection is not private, because it does not trust this
   computer yet. Go on past the warning this once ("Advanced", or "Show Details").
   A file is downloaded.
2. Android tablet: open Settings, search for "CA certificate", choose it, choose
   "Install anyway", then the downloaded file.
   iPad: allow the profile to be downloaded in Safari. Then open Settings, General,
   "VPN & Device Management", choose the downloaded profile and install it. Then
   Settings, General, About, "Certificate Trust Settings": switch it on.
   Names of menus differ between makers and versions.
3. The fingerprint the tablet shows must be this one (SHA-256):
   ${fingerprint}
4. Open ${url} again. There is no warning now. Add it to the home screen.

Do this on your own tablets alone. Whoever can read ${home}
could pass for any website to a tablet that trusts it. Take the certificate
off the tablet again, in the same settings, when you stop using it.

Why not plain http? A page from a network address without https has no service
worker, so it needs this computer running for every opening; it cannot keep the
screen awake; it cannot tell that a second tab is open on the same bake; and it
cannot ask the tablet to keep its log when space runs short.
`;
}
