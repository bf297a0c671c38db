import { entryPath, sessionItem } from '#shared-calc/contract/entry.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/*
 * The service wants a secret with every call. A tab keeps it for itself, so no other server of this address gets it; a
 * new tab asks the others for it.
 */

/** How long the other tabs have to answer. */
const ASK_MS = 1_000;

type Passed = { readonly is: 'asked' } | { readonly is: 'secret'; readonly secret: string };

/** The headers by which the service knows its page. */
export function sessionHeaders(): { readonly authorization?: string } {
  const secret = sessionStorage.getItem(sessionItem);
  return secret === null ? {} : { authorization: `Bearer ${secret}` };
}

/** The service does not know the secret in these headers: the next load of the page asks for another. */
export function forgetSession({ authorization }: { readonly authorization?: string }): void {
  if (authorization === sessionHeaders().authorization) sessionStorage.removeItem(sessionItem);
}

/** Gets the secret for this tab: by the key of its link, by an earlier load, or from another tab. */
export async function enterSession(page: Window): Promise<Result<undefined, string>> {
  const channel = new BroadcastChannel(sessionItem);
  const keep = (secret: string) => sessionStorage.setItem(sessionItem, secret);
  const pass = (message: Passed) => channel.postMessage(message);
  const entered = await useLink(page);
  if (entered?.ok) {
    keep(entered.value);
    // Tabs of a program that has ended since take the new secret, too.
    pass({ is: 'secret', secret: entered.value });
  }
  if (sessionStorage.getItem(sessionItem) === null) await askTabs(channel, keep);
  channel.onmessage = ({ data }: MessageEvent<Passed>) => {
    const secret = sessionStorage.getItem(sessionItem);
    if (data.is === 'secret') keep(data.secret);
    else if (secret !== null) pass({ is: 'secret', secret });
  };
  if (sessionStorage.getItem(sessionItem) !== null) return ok(undefined);
  return failed(entered?.ok === false ? entered.fault : notIn);
}

const notIn = 'This window has not been let in. Open the link that Loamwright wrote where it was started.';

/** Takes the key out of the address, so that it does not stay in the history, and gives it for the secret. */
async function useLink({ location, history }: Window): Promise<Result<string, string> | undefined> {
  const link = new URL(location.href);
  const key = link.searchParams.get('key');
  if (key === null) return undefined;
  history.replaceState(null, '', `/${link.hash}`);
  try {
    const answer = await fetch(entryPath, { method: 'POST', body: new URLSearchParams({ key }) });
    const text = (await answer.text()).trim();
    return answer.ok ? ok(text) : failed(text);
  } catch {
    return failed('Loamwright does not answer. Start it, and open the link that it writes.');
  }
}

function askTabs(channel: BroadcastChannel, keep: (secret: string) => void): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, ASK_MS);
    channel.onmessage = ({ data }: MessageEvent<Passed>) => {
      if (data.is !== 'secret') return;
      keep(data.secret);
      clearTimeout(timer);
      resolve();
    };
    channel.postMessage({ is: 'asked' });
  });
}
