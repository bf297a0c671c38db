import type { CustomScheme, Protocol } from 'electron';

import { readPageFile } from '#electron/host/page-files.ts';
import { isPageUrl, pageScheme } from './trusted-url.ts';

/** Registered before the app is ready: the page gets the same rules as one from a secure connection. */
export const pageSchemes: CustomScheme[] = [
  { scheme: pageScheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
];

/** Serves the page's files, and nothing from outside its folder. */
export function servePage(protocol: Pick<Protocol, 'handle'>, folder: string): void {
  protocol.handle(pageScheme, (request) => answerPage(request, folder));
}

export function answerPage(request: Pick<Request, 'url' | 'method'>, folder: string): Response {
  if (request.method !== 'GET' || !isPageUrl(request.url)) return new Response('', { status: 403 });
  const file = readPageFile(folder, new URL(request.url).pathname);
  return new Response(file.body, { status: file.status, headers: { ...file.headers } });
}
