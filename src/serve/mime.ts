/** What each kind of file is called on the wire, and whether it shrinks when packed. */
const KINDS: Readonly<Record<string, readonly [type: string, shrinks: boolean]>> = {
  html: ['text/html; charset=utf-8', true],
  js: ['text/javascript; charset=utf-8', true],
  css: ['text/css; charset=utf-8', true],
  json: ['application/json; charset=utf-8', true],
  webmanifest: ['application/manifest+json; charset=utf-8', true],
  svg: ['image/svg+xml; charset=utf-8', true],
  txt: ['text/plain; charset=utf-8', true],
  wasm: ['application/wasm', true],
  onnx: ['application/octet-stream', true],
  png: ['image/png', false],
  jpg: ['image/jpeg', false],
  webp: ['image/webp', false],
  ico: ['image/x-icon', false],
  woff2: ['font/woff2', false],
  mp3: ['audio/mpeg', false],
  wav: ['audio/wav', true],
  ogg: ['audio/ogg', false],
  crt: ['application/x-x509-ca-cert', false],
};

/** The media type of a file by its name; unknown endings are plain bytes, never guessed. */
export function mime(name: string): { type: string; shrinks: boolean } {
  const ending = name.slice(name.lastIndexOf('.') + 1).toLowerCase();
  const [type, shrinks] = KINDS[ending] ?? ['application/octet-stream', false];
  return { type, shrinks };
}
