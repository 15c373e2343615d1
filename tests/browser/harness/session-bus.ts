import { execFile, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { promisify } from 'node:util';
import type { TestContext } from 'vitest';
import { NEEDS } from '../../reporter.ts';
import { closeLater } from './open.ts';

/** The keys of a keyboard or of headphones, by what a desktop tells a player (MPRIS D-Bus Interface 2.2). */
export type PlayerKey = 'PlayPause' | 'Next' | 'Previous';

const PLAYER = 'org.mpris.MediaPlayer2';
const PATH = '/org/mpris/MediaPlayer2';

/** A desktop of its own, to which a browser that plays says so, and which hands it the keys. */
export interface SessionBus {
  /** What a browser is started with to find it. */
  readonly env: Readonly<Record<string, string>>;
  /** 'Playing', 'Paused' or 'Stopped'; null where no browser claims the keys. */
  playback(): Promise<string | null>;
  press(key: PlayerKey): Promise<void>;
}

/** Leaves a test out, and has it counted as not run, where this machine has no such bus. */
export const needBus = ({ skip }: TestContext): void => {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter(Boolean);
  const has = (name: string) => folders.some((folder) => existsSync(join(folder, name)));
  skip(!has('dbus-daemon') || !has('dbus-send'), `${NEEDS}dbus`);
};

/** Starts one. Closed by itself when the test file is over. */
export async function openBus(): Promise<SessionBus> {
  const daemon = spawn('dbus-daemon', ['--session', '--nofork', '--print-address'], {
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  closeLater(async () => void daemon.kill());
  const address = await new Promise<string>((then, no) => {
    daemon.once('exit', () => no(new Error('The bus did not start.')));
    daemon.stdout.setEncoding('utf8').once('data', (line: string) => then(line.trim()));
  });
  const ask = async (to: string, path: string, ...call: string[]): Promise<string> => {
    const args = [`--bus=${address}`, '--print-reply', `--dest=${to}`, path, ...call];
    return (await promisify(execFile)('dbus-send', args)).stdout;
  };
  const player = async (): Promise<string | null> => {
    const names = await ask(
      'org.freedesktop.DBus',
      '/org/freedesktop/DBus',
      'org.freedesktop.DBus.ListNames',
    );
    return /"(org\.mpris\.MediaPlayer2\.[^"]+)"/.exec(names)?.[1] ?? null;
  };
  return {
    env: { DBUS_SESSION_BUS_ADDRESS: address },
    async playback() {
      const name = await player();
      if (name === null) return null;
      const asked = [`string:${PLAYER}.Player`, 'string:PlaybackStatus'];
      const answer = await ask(name, PATH, 'org.freedesktop.DBus.Properties.Get', ...asked);
      return /"(\w+)"/.exec(answer)?.[1] ?? null;
    },
    async press(key) {
      const name = await player();
      if (name === null) throw new Error('No browser claims the keys.');
      await ask(name, PATH, `${PLAYER}.Player.${key}`);
    },
  };
}
