import { createReadStream, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { ServerResponse } from 'node:http';
import { extname, join, normalize } from 'node:path';

/** The content policy the program serves its page with. */
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self' 'nonce-stand-in'; img-src 'self' data:; font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'self'";

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.md': 'text/plain',
  '.svg': 'image/svg+xml',
};

export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/** A built page on a loopback address, under the strict content policy. */
export async function servePage(folder: string): Promise<Served> {
  const server = createServer((request, response) => {
    const path = normalize(new URL(request.url ?? '/', 'http://page').pathname);
    sendFile(response, join(folder, path === '/' ? 'index.html' : path));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  return { url: `http://127.0.0.1:${port}/`, close: () => new Promise((done) => server.close(() => done())) };
}

function sendFile(response: ServerResponse, file: string): void {
  const type = kinds[extname(file)] ?? 'application/octet-stream';
  response.setHeader('content-type', `${type}; charset=utf-8`);
  response.setHeader('content-security-policy', policy);
  if (extname(file) === '.html') response.end(readFileSync(file, 'utf8').replace('{{style-nonce}}', 'stand-in'));
  else
    createReadStream(file)
      .on('error', () => response.writeHead(404).end())
      .pipe(response);
}
