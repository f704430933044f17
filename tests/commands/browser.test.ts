import { describe, expect, it } from 'vitest';
import { findBrowser, type Machine, NoBrowser } from '../../src/commands/browser.ts';

const machine = (platform: NodeJS.Platform, env: Machine['env'], files: readonly string[]): Machine => ({
  platform,
  env,
  runnable: (path) => files.includes(path),
});

describe('findBrowser', () => {
  it('takes the program that CHROMIUM_PATH names before any other', () => {
    const env = { CHROMIUM_PATH: '/my/chrome', PATH: '/usr/bin' };
    expect(findBrowser(machine('linux', env, ['/my/chrome', '/usr/bin/chromium']))).toBe('/my/chrome');
  });

  it('refuses a CHROMIUM_PATH that leads nowhere instead of taking another browser', () => {
    const env = { CHROMIUM_PATH: '/gone', PATH: '/usr/bin' };
    expect(() => findBrowser(machine('linux', env, ['/usr/bin/chromium']))).toThrow(NoBrowser);
  });

  it('searches the PATH in its order', () => {
    const files = ['/b/chromium', '/a/google-chrome'];
    expect(findBrowser(machine('linux', { PATH: '/a:/b' }, files))).toBe('/a/google-chrome');
  });

  it('looks where a Mac keeps its programs', () => {
    const place = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';
    expect(findBrowser(machine('darwin', {}, [place]))).toBe(place);
  });

  it('fills in the folders that Windows names in its environment', () => {
    const place = 'D:\\Programs\\Microsoft\\Edge\\Application\\msedge.exe';
    expect(findBrowser(machine('win32', { PROGRAMFILES: 'D:\\Programs' }, [place]))).toBe(place);
  });

  it('finds none where there is none', () => {
    expect(findBrowser(machine('linux', { PATH: '/usr/bin' }, []))).toBeUndefined();
  });
});
