/** Where each kind of content may come from: from this server alone, and nothing written inline. */
const POLICY = [
  "default-src 'self'",
  // The nets of the learned ear are run by WebAssembly, which a policy that says nothing of it refuses to
  // compile, from here too. It lets no text become script: that would be 'unsafe-eval'.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "media-src 'self' blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "object-src 'none'",
];

/** What the page may ask the tablet for. All else is refused even if a script asks. */
const PERMISSIONS = [
  'microphone=(self)',
  'camera=(self)',
  'bluetooth=(self)',
  'screen-wake-lock=(self)',
  'autoplay=(self)',
  'geolocation=()',
  'payment=()',
  'usb=()',
];

/** Sent with every answer, errors too. */
export const STRICT_HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy': POLICY.join('; '),
  'Permissions-Policy': PERMISSIONS.join(', '),
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};
