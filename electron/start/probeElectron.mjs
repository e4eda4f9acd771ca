// Is there an Electron to run? Its package brings no binary; it fetches one when first asked for it.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ownNode, ROOT, say, withOwnNode } from './tools.mjs';

/** Fetching about 100 MB over a slow line; a network that does not answer is given up on after this. */
const FETCH_LIMIT_MS = 90_000;
/** Electron says its version in well under a second; one that lacks a system library says nothing. */
const ANSWER_LIMIT_MS = 10_000;
/** A failed fetch is not tried again on every start. */
const TRY_AGAIN_AFTER_MS = 24 * 3_600_000;

const MEMORY = join(ROOT, 'dist', 'electron-probe.json');

/** @returns {{path: string} | {why: string}} the binary, or why there is none */
export function probeElectron() {
  const isHere = existsSync(join(ROOT, 'node_modules', 'electron', 'path.txt'));
  const isNamed = Boolean(process.env.ELECTRON_OVERRIDE_DIST_PATH);
  if (!isHere && !isNamed) {
    const failed = rememberedFailure();
    if (failed !== null) return { why: failed };
    say('looking for Electron, which is fetched once …');
  }
  const asked = ask(ownNode(), ['-p', "require('electron')"], FETCH_LIMIT_MS);
  const path = asked.stdout.trim().split('\n').at(-1) ?? '';
  if (asked.status !== 0 || !existsSync(path))
    return remember(
      asked.isLate ? 'fetching it takes too long' : 'its binary is not here and could not be fetched',
    );
  const answered = ask(path, ['--version'], ANSWER_LIMIT_MS);
  if (answered.status !== 0) return { why: 'its binary is here but does not run on this machine' };
  return { path };
}

function ask(command, args, limitMs) {
  const done = spawnSync(command, args, {
    cwd: ROOT,
    encoding: 'utf8',
    timeout: limitMs,
    env: withOwnNode(),
  });
  return { status: done.status, stdout: done.stdout ?? '', isLate: done.error?.code === 'ETIMEDOUT' };
}

function rememberedFailure() {
  if (!existsSync(MEMORY)) return null;
  try {
    const { triedAtMs, why } = JSON.parse(readFileSync(MEMORY, 'utf8'));
    return Date.now() - triedAtMs < TRY_AGAIN_AFTER_MS ? String(why) : null;
  } catch {
    return null; // written half; the next probe writes it anew
  }
}

function remember(why) {
  mkdirSync(join(ROOT, 'dist'), { recursive: true });
  writeFileSync(MEMORY, JSON.stringify({ triedAtMs: Date.now(), why }));
  return { why };
}
