// Finds a Chromium-like browser for the tests and, where it may, installs Debian's packages.
// A shell without windows goes first: opening a page costs it less than half of a whole browser's processor time.
// Run by itself it prints the path; with CI or REQUIRE_BROWSER set, finding none is a failure.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';

const SHELL = 'chromium-headless-shell';
const NAMES = [
  SHELL,
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'microsoft-edge-stable',
  'microsoft-edge',
];

export const LAUNCH_ARGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--force-color-profile=srgb',
  '--font-render-hinting=none',
];

export const findBrowser = () => [...new Set(candidates())].find((path) => existsSync(path) && usable(path));

/** Where a run has to be green and its machine may be changed, the shell is fetched even beside a whole browser. */
export function ensureBrowser() {
  const found = findBrowser();
  if (found === undefined) return tryInstall(SHELL) || tryInstall('chromium') ? findBrowser() : undefined;
  const isSlow = process.env.CI && /[\\/]chromium$/.test(found);
  return isSlow && tryInstall(SHELL) ? findBrowser() : found;
}

function candidates() {
  const { env, platform } = process;
  const named = ['BROWSER_BIN', 'CHROME_BIN', 'CHROME_PATH'].flatMap((key) => env[key] ?? []);
  const onPath = (env.PATH ?? '')
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...named, ...placesOf(platform, env), ...onPath];
}

function placesOf(platform, env) {
  if (platform === 'win32') {
    const roots = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter(Boolean);
    const tails = ['Google/Chrome/Application/chrome.exe', 'Microsoft/Edge/Application/msedge.exe'];
    return roots.flatMap((root) => tails.map((tail) => join(root, tail)));
  }
  if (platform === 'darwin') {
    const roots = ['/Applications', join(env.HOME ?? '', 'Applications')];
    const apps = ['Google Chrome', 'Chromium', 'Microsoft Edge'];
    return roots.flatMap((root) => apps.map((app) => join(root, `${app}.app`, 'Contents', 'MacOS', app)));
  }
  return [];
}

function usable(path) {
  try {
    accessSync(path, constants.X_OK);
  } catch {
    return false;
  }
  if (process.platform !== 'linux') return true;
  // a package stub that cannot start answers nothing here
  const answer = spawnSync(path, ['--version'], { encoding: 'utf8', timeout: 20_000 });
  return answer.status === 0 && /\d+\.\d+/.test(answer.stdout);
}

function tryInstall(...packages) {
  const mayTry =
    process.platform === 'linux' && existsSync('/usr/bin/apt-get') && !process.env.NO_BROWSER_INSTALL;
  if (!mayTry) return false;
  const isRoot = process.getuid?.() === 0;
  const silentSudo = !isRoot && process.env.CI && spawnSync('sudo', ['-n', 'true']).status === 0;
  // never behind a desktop user's back, never with a password prompt
  if (!isRoot && !silentSudo) return false;
  const run = (...words) => {
    const [command, ...rest] = isRoot ? words : ['sudo', '-n', ...words];
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    return spawnSync(command, rest, { stdio: ['ignore', 2, 2], env, timeout: 300_000 }).status === 0;
  };
  const fonts = ['fonts-dejavu-core', 'fonts-liberation'];
  run('apt-get', 'update', '-qq');
  return run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', ...packages, ...fonts);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const path = ensureBrowser();
  if (path) console.log(path);
  else {
    console.error('No Chromium, Chrome or Edge found. Install one, or name it in BROWSER_BIN.');
    console.error('Without it the browser tests are left out.');
    process.exit(process.env.CI || process.env.REQUIRE_BROWSER ? 1 : 0);
  }
}
