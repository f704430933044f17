import { createHash } from 'node:crypto';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildKillSwitch, buildWorker, listFiles } from '../../src/commands/build-worker.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'faultwright-'));
  await mkdir(join(folder, 'guides'));
  await writeFile(join(folder, 'index.html'), 'front');
  await writeFile(join(folder, '404.html'), 'nothing here');
  await writeFile(join(folder, 'guides/index.html'), 'guides');
});
afterEach(() => rm(folder, { recursive: true }));

describe('the list of files to save', () => {
  it('holds every file with the hash of its content, and the sum of their sizes', async () => {
    const list = await listFiles(folder);
    expect(Object.keys(list.files)).toEqual(['404.html', 'guides/index.html', 'index.html']);
    const hash = createHash('sha256').update('front').digest('base64');
    expect(list.files['index.html']).toBe(`sha256-${hash}`);
    expect(list.bytes).toBe('front'.length + 'nothing here'.length + 'guides'.length);
  });

  it('gives the same version for the same content and another for a changed byte', async () => {
    const { version } = await listFiles(folder);
    await writeFile(join(folder, 'index.html'), 'front');
    expect((await listFiles(folder)).version).toBe(version);
    await writeFile(join(folder, 'index.html'), 'Front');
    expect((await listFiles(folder)).version).not.toBe(version);
  });

  it('leaves the worker itself out, so that building twice changes nothing', async () => {
    const first = await buildWorker(folder, '/');
    const second = await buildWorker(folder, '/');
    expect(second).toEqual(first);
    expect(await readFile(join(folder, 'sw.js'), 'utf8')).toContain(first.version);
  });

  it('refuses a site without the page that is shown when nothing else can be', async () => {
    await rm(join(folder, '404.html'));
    await expect(buildWorker(folder, '/')).rejects.toThrow('404.html');
  });
});

describe('the kill switch', () => {
  it('stands under the same name as the worker', async () => {
    await buildKillSwitch(folder, '/field/');
    const source = await readFile(join(folder, 'sw.js'), 'utf8');
    expect(source).toContain('unregister');
    expect(source).toContain('faultwright /field/ ');
  });
});
