/** A small server for the built site: what any static host does, and nothing more. */
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize, resolve, sep } from 'node:path';
import { joinBase } from '../components/href.ts';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

interface Found {
  path: string;
  size: number;
  modified: Date;
}

async function fileAt(path: string): Promise<Found | 'folder' | undefined> {
  try {
    const info = await stat(path);
    if (info.isDirectory()) return 'folder';
    return info.isFile() ? { path, size: info.size, modified: info.mtime } : undefined;
  } catch {
    return undefined;
  }
}

/** The file path that an address asks for, or `undefined` where it leaves the folder or is not an address. */
export function pathIn(folder: string, urlPath: string): string | undefined {
  let decoded: string;
  try {
    decoded = decodeURIComponent(urlPath);
  } catch {
    return undefined;
  }
  if (decoded.includes('\0') || decoded.includes('\\')) return undefined;
  const root = resolve(folder);
  const path = resolve(join(root, normalize(`/${decoded}`)));
  return path === root || path.startsWith(root + sep) ? path : undefined;
}

/** Names that hold the hash of their content may be kept; everything else is asked for again each time. */
const cacheControl = (path: string): string =>
  path.includes(`${sep}_astro${sep}`) ? 'public, max-age=31536000, immutable' : 'no-cache';

function send(request: IncomingMessage, response: ServerResponse, status: number, file: Found): void {
  const etag = `"${file.size.toString(36)}-${file.modified.getTime().toString(36)}"`;
  const headers = {
    'Content-Type': types[extname(file.path)] ?? 'application/octet-stream',
    'Cache-Control': cacheControl(file.path),
    'X-Content-Type-Options': 'nosniff',
    ETag: etag,
  };
  if (status === 200 && request.headers['if-none-match'] === etag) {
    response.writeHead(304, headers).end();
    return;
  }
  response.writeHead(status, { ...headers, 'Content-Length': file.size });
  if (request.method === 'HEAD') response.end();
  else
    createReadStream(file.path)
      .on('error', () => response.destroy())
      .pipe(response);
}

function sendText(
  response: ServerResponse,
  status: number,
  text: string,
  more: Record<string, string> = {},
): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8', ...more }).end(`${text}\n`);
}

/** Answer one request for a site in `folder` that is served under `base` (`/` or `/guide/`). */
async function answer(
  folder: string,
  base: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    sendText(response, 405, 'Only GET and HEAD are answered here.', { Allow: 'GET, HEAD' });
    return;
  }
  const [urlPath = '/', query] = (request.url ?? '/').split('?', 2);
  const tail = query === undefined ? '' : `?${query}`;
  if (!urlPath.startsWith(base)) {
    if (`${urlPath}/` === base) sendText(response, 301, 'Moved.', { Location: base + tail });
    else sendText(response, 404, `This site stands under ${base}`);
    return;
  }
  const path = pathIn(folder, urlPath.slice(base.length));
  // Two slashes at the start would turn a redirect into one to another host.
  if (path === undefined || urlPath.startsWith('//')) {
    sendText(response, 400, 'Not an address of this site.');
    return;
  }
  const found = await fileAt(path);
  if (found === 'folder' && !urlPath.endsWith('/')) {
    sendText(response, 301, 'Moved.', { Location: `${urlPath}/${tail}` });
    return;
  }
  const file = found === 'folder' ? await fileAt(join(path, 'index.html')) : found;
  if (file && file !== 'folder') {
    send(request, response, 200, file);
    return;
  }
  const notFound = await fileAt(join(folder, '404.html'));
  if (notFound && notFound !== 'folder') send(request, response, 404, notFound);
  else sendText(response, 404, 'No such page.');
}

export interface ServeOptions {
  folder: string;
  /** The path that the site was built for. */
  base?: string;
  host?: string;
  /** 0 lets the system choose. */
  port: number;
  /** How many ports above `port` to try when it is taken. */
  tries?: number;
  /** Told of every request, before it is answered. */
  onRequest?: (request: IncomingMessage) => void;
}

export interface Serving {
  /** The front page's address. */
  url: string;
  close: () => Promise<void>;
}

function listen(server: Server, host: string, port: number): Promise<number> {
  return new Promise((done, fail) => {
    server.once('error', fail);
    server.listen(port, host, () => {
      server.off('error', fail);
      const address = server.address();
      done(typeof address === 'object' && address ? address.port : port);
    });
  });
}

const isTaken = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && (error.code === 'EADDRINUSE' || error.code === 'EACCES');

/** Serve a folder. Rejects when no port in reach is free. */
export async function serve(options: ServeOptions): Promise<Serving> {
  const { folder, host = '127.0.0.1', port, tries = 0, onRequest } = options;
  const base = joinBase(options.base ?? '/', '');
  const server = createServer((request, response) => {
    onRequest?.(request);
    answer(folder, base, request, response).catch((error: unknown) => {
      console.error(error);
      if (response.headersSent) response.destroy();
      else sendText(response, 500, 'The server failed.');
    });
  });
  for (let step = 0; ; step += 1) {
    try {
      const bound = await listen(server, host, port === 0 ? 0 : port + step);
      return {
        url: `http://${host}:${bound}${base}`,
        close: () =>
          new Promise((done) => {
            server.close(() => done());
            server.closeAllConnections();
          }),
      };
    } catch (error) {
      if (!isTaken(error) || step >= tries) throw error;
    }
  }
}
