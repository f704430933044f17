import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pathIn, type Serving, serve } from '../../src/commands/static-server.ts';

let folder: string;
let site: Serving;

beforeAll(async () => {
  folder = join(await mkdtemp(join(tmpdir(), 'faultwright-')), 'site');
  await mkdir(join(folder, 'guides/pv'), { recursive: true });
  await mkdir(join(folder, '_astro'));
  await writeFile(join(folder, 'index.html'), 'front');
  await writeFile(join(folder, '404.html'), 'nothing here');
  await writeFile(join(folder, 'guides/pv/index.html'), 'guide');
  await writeFile(join(folder, '_astro/a.abc123.js'), 'let a');
  await writeFile(join(folder, 'manifest.webmanifest'), '{}');
  await writeFile(join(folder, '../secret.txt'), 'secret');
  site = await serve({ folder, base: '/field', port: 0 });
});
afterAll(async () => {
  await site.close();
  await rm(join(folder, '..'), { recursive: true });
});

const get = (path: string, init: RequestInit = {}) =>
  fetch(new URL(path, site.url), { redirect: 'manual', ...init });

/** The status of a request whose path no client would send as it stands. */
function rawStatus(path: string): Promise<number> {
  const { hostname, port } = new URL(site.url);
  return new Promise((done, fail) => {
    const socket = connect(Number(port), hostname, () =>
      socket.write(`GET ${path} HTTP/1.1\r\nHost: ${hostname}\r\nConnection: close\r\n\r\n`),
    );
    let text = '';
    socket.on('data', (chunk) => {
      text += chunk;
    });
    socket.on('error', fail);
    socket.on('close', () => done(Number(text.split(' ')[1])));
  });
}

describe('the static server', () => {
  it('gives the index of a folder, with its type, under its base', async () => {
    const response = await get('guides/pv/');
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(await response.text()).toBe('guide');
  });

  it('sends an address without its last slash to the one with it, and keeps the query', async () => {
    const response = await get('guides/pv?from=mail');
    expect([response.status, response.headers.get('location')]).toEqual([301, '/field/guides/pv/?from=mail']);
    expect((await get('/field')).headers.get('location')).toBe('/field/');
  });

  it('knows the type of a web app manifest', async () => {
    expect((await get('manifest.webmanifest')).headers.get('content-type')).toBe('application/manifest+json');
  });

  it('lets hashed files be kept and has pages asked for again', async () => {
    expect((await get('_astro/a.abc123.js')).headers.get('cache-control')).toContain('immutable');
    const page = await get('');
    expect(page.headers.get('cache-control')).toBe('no-cache');
    const again = await get('', { headers: { 'if-none-match': page.headers.get('etag') ?? '' } });
    expect(again.status).toBe(304);
  });

  it('answers an unknown address with the 404 page', async () => {
    const response = await get('nowhere/');
    expect([response.status, await response.text()]).toEqual([404, 'nothing here']);
    expect((await get('/elsewhere')).status).toBe(404);
  });

  it('answers HEAD without a body and refuses to be written to', async () => {
    const head = await get('', { method: 'HEAD' });
    expect([head.status, await head.text(), head.headers.get('content-length')]).toEqual([200, '', '5']);
    expect((await get('', { method: 'POST' })).status).toBe(405);
  });

  it.each([
    '/field/../secret.txt',
    '/field/%2e%2e/secret.txt',
    '/field/..%2fsecret.txt',
    '/field/..%5csecret.txt',
  ])('never leaves its folder: %s', async (path) => {
    expect([400, 404]).toContain(await rawStatus(path));
  });

  it('refuses an address that cannot be read', async () => {
    expect(await rawStatus('/field/%zz')).toBe(400);
    expect(await rawStatus('/field/%00')).toBe(400);
  });

  it('never redirects to another host', async () => {
    const root = await serve({ folder, port: 0 });
    const response = await fetch(`${root.url}/guides/pv`, { redirect: 'manual' });
    expect(response.headers.get('location') ?? '').not.toMatch(/^\/\//);
    await root.close();
  });

  it('takes the next port when one is busy, and says which', async () => {
    const busy = Number(new URL(site.url).port);
    const next = await serve({ folder, port: busy, tries: 20 });
    expect(Number(new URL(next.url).port)).toBeGreaterThan(busy);
    await next.close();
    await expect(serve({ folder, port: busy })).rejects.toThrow('EADDRINUSE');
  });
});

describe('pathIn', () => {
  it('holds every path inside the folder', () => {
    expect(pathIn('/srv/site', 'a/b.html')).toBe('/srv/site/a/b.html');
    expect(pathIn('/srv/site', '../x')).toBe('/srv/site/x');
    expect(pathIn('/srv/site', 'a\\..\\x')).toBeUndefined();
  });
});
