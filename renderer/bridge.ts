import '#shared-calc/contract/no-code-from-text.ts';
import type { Channel } from '#shared-calc/contract/channel-names.ts';
import type { Input, Output, Refusal } from '#shared-calc/contract/channels.ts';
import type { DesktopDoor, DesktopFiles } from '#shared-calc/contract/desktop-door.ts';
import { News } from '#shared-calc/contract/news.ts';
import { readAnswer } from '#shared-calc/contract/read-answer.ts';
import { failed } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';
import { forgetSession, sessionHeaders } from './session-secret.ts';
import { listenTogether } from './shared-news.ts';

declare global {
  interface Window {
    /** Set by the desktop's preload script. */
    readonly loamwright?: DesktopDoor;
  }
}

/** News from the service; `away` when it stops answering, `back` when it answers again. */
export type BridgeNews = News | { readonly is: 'away' } | { readonly is: 'back' };
type Listener = (news: BridgeNews) => void;

/** The page's only access to the service, the same on the desktop and on a loopback address. */
export interface Bridge {
  /** Calls are answered in the order they were made, but for long work, which no call waits for. */
  readonly call: <C extends Channel>(channel: C, input: Input<C>) => Promise<Result<Output<C>, Refusal>>;
  /** The system's file dialogs; none in a browser. */
  readonly desktop: DesktopFiles | undefined;
  /** Returns a function that stops listening. */
  readonly onChanged: (listener: Listener) => () => void;
}

/** Transports calls and news. */
interface Carrier {
  readonly send: (channel: Channel, input: unknown) => Promise<unknown>;
  readonly listen: (listener: Listener) => () => void;
}

export function openBridge(page: Window): Bridge {
  const { send, listen } = page.loamwright ? desktopCarrier(page.loamwright) : loopbackCarrier;
  let last: Promise<unknown> = Promise.resolve();
  return {
    call: async (channel, input) => {
      // Takes seconds for a job of hundreds of sizes, and says itself which edit it is about.
      const besides = channel === 'bench.confirm';
      const answer = besides ? send(channel, input) : last.then(() => send(channel, input));
      if (!besides) last = answer.catch(() => undefined);
      return answer.then((data) => readAnswer(channel, data)).catch(() => failed(noAnswer));
    },
    desktop: page.loamwright?.files,
    onChanged: listen,
  };
}

const noAnswer: Refusal = {
  says: 'Loamwright does not answer. Not kept, unless it shows when it is back.',
  readAgain: true,
};

function desktopCarrier({ call, onNews }: DesktopDoor): Carrier {
  return {
    send: (channel, input) => call[channel](input),
    listen: (listener) => onNews((news) => tell(listener, news)),
  };
}

/** A call that takes longer is given up, and the page reads again what was kept. */
const CALL_MS = 30_000;

const loopbackCarrier: Carrier = {
  send: async (channel, input) => {
    const session = sessionHeaders();
    const headers = { ...session, 'content-type': 'application/json' };
    const body = JSON.stringify(input);
    const signal = AbortSignal.timeout(CALL_MS);
    const answer = await fetch(`/call/${channel}`, { method: 'POST', headers, body, signal });
    const text = await answer.text();
    if (answer.status === 403) forgetSession(session);
    const data: unknown = answer.ok ? JSON.parse(text) : { ok: false, fault: refusalOf(answer.status, text) };
    return data;
  },
  listen: (listener) =>
    listenTogether('/events', (heard) => (heard.is === 'sent' ? tell(listener, heard.data) : listener(heard))),
};

/** The host gives its reason for rejecting a call as plain text. */
function refusalOf(status: number, says: string): Refusal {
  const ended = 'Loamwright was started anew since this page was opened; open the link that it wrote then.';
  return { says: status === 403 ? ended : says.trim(), readAgain: false };
}

/** Ignores messages that are not news. */
function tell(listener: Listener, data: unknown): void {
  const news = News.safeParse(data);
  if (news.success) listener(news.data);
}
