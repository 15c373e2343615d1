import { readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';

/** @param {number} pid */
function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return /** @type {NodeJS.ErrnoException} */ (error).code === 'EPERM';
  }
}

/** @param {string} file */
function take(file) {
  try {
    writeFileSync(file, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === 'EEXIST') return false;
    throw error;
  }
}

/**
 * Clears a lock whose holder is gone. It is moved aside first, by one rename, so that of two who
 * find it only one clears it.
 *
 * @param {string} file
 */
function clearDead(file) {
  try {
    const holder = Number(readFileSync(file, 'utf8'));
    // An empty file is a holder between creating it and writing its number, unless it is old.
    const isYoung = Date.now() - statSync(file).mtimeMs < 10_000;
    if (holder ? isAlive(holder) : isYoung) return;
    const aside = `${file}.${process.pid}`;
    renameSync(file, aside);
    rmSync(aside, { force: true });
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code !== 'ENOENT') throw error;
  }
}

/**
 * Runs `work` while no other process that asks for the same lock file runs its own. The lock of a
 * process that died is taken over.
 *
 * @template T
 * @param {string} file made and removed again
 * @param {() => T | Promise<T>} work
 * @param {() => void} [onWait] called once when another process holds the lock
 * @returns {Promise<T>}
 */
export async function withLock(file, work, onWait = () => {}) {
  let told = false;
  while (!take(file)) {
    clearDead(file);
    if (!told) onWait();
    told = true;
    await sleep(200);
  }
  try {
    return await work();
  } finally {
    rmSync(file, { force: true });
  }
}
