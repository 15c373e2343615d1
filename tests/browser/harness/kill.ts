import { readdirSync, readFileSync } from 'node:fs';

/** Every process that was started with this folder on its command line, by /proc. */
const processesOf = (folder: string): number[] =>
  readdirSync('/proc').flatMap((name) => {
    if (!/^\d+$/.test(name) || Number(name) === process.pid) return [];
    try {
      return readFileSync(`/proc/${name}/cmdline`, 'utf8').includes(folder) ? [Number(name)] : [];
    } catch {
      return []; // It has ended meanwhile.
    }
  });

/** SIGKILL to the whole browser that keeps its storage in `profile`: no handler runs, nothing is flushed. */
export function killBrowser(profile: string): number {
  const pids = processesOf(profile);
  for (const pid of pids) {
    try {
      process.kill(pid, 'SIGKILL');
    } catch {
      // It has ended meanwhile.
    }
  }
  return pids.length;
}
