import { fileURLToPath } from 'node:url';
import { start } from './start.ts';

try {
  const served = await start({
    args: process.argv.slice(2),
    env: process.env,
    dir: fileURLToPath(new URL('../../dist', import.meta.url)),
    now: Date.now(),
    print: (words) => console.log(words),
  });
  for (const signal of ['SIGINT', 'SIGTERM'] as const)
    process.once(signal, () => void served.close().then(() => process.exit(0)));
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
