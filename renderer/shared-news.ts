import { sessionHeaders } from './session-secret.ts';

/** What a tab hears: whether the service answers, or something that it sent. */
export type Heard = { readonly is: 'away' | 'back' } | { readonly is: 'sent'; readonly data: unknown };
type Hear = (heard: Heard) => void;

const NAME = 'loamwright news';
const RETRY_MS = 1_000;
/** The service writes something every five seconds; one that is silent for longer has stopped. */
const SILENT_MS = 15_000;

/**
 * Listens to the service once for all tabs: a browser opens six connections to a host, and a listening tab keeps one for
 * itself. The tab that holds the lock listens and passes on what it hears; when it is closed, the next one takes over.
 */
export function listenTogether(address: string, hear: Hear): () => void {
  const channel = new BroadcastChannel(NAME);
  channel.onmessage = ({ data }: MessageEvent<Heard>) => hear(data);
  const closing = new AbortController();
  const tell = (heard: Heard) => {
    hear(heard);
    channel.postMessage(heard);
  };
  navigator.locks
    .request(NAME, { signal: closing.signal }, () => listenHere(address, tell, closing.signal))
    .catch(() => undefined);
  return () => {
    closing.abort();
    channel.close();
  };
}

/** Reads the stream, and begins again whenever it ends. `EventSource` cannot send the secret. */
async function listenHere(address: string, tell: Hear, closing: AbortSignal): Promise<void> {
  let isAway = false;
  while (!closing.aborted) {
    await readStream(address, closing, (line) => {
      if (isAway) tell({ is: 'back' });
      isAway = false;
      if (line.startsWith('data: ')) tell({ is: 'sent', data: JSON.parse(line.slice('data: '.length)) });
    }).catch(() => undefined);
    if (closing.aborted) return;
    if (!isAway) tell({ is: 'away' });
    isAway = true;
    await new Promise((resolve) => setTimeout(resolve, RETRY_MS));
  }
}

async function readStream(address: string, closing: AbortSignal, take: (line: string) => void): Promise<void> {
  const silence = new AbortController();
  let timer = setTimeout(() => silence.abort(), SILENT_MS);
  try {
    const signal = AbortSignal.any([closing, silence.signal]);
    const { ok, body } = await fetch(address, { headers: sessionHeaders(), signal });
    if (!ok || !body) return;
    const reader = body.pipeThrough(new TextDecoderStream()).getReader();
    let text = '';
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      clearTimeout(timer);
      timer = setTimeout(() => silence.abort(), SILENT_MS);
      const lines = `${text}${part.value}`.split('\n');
      text = lines.pop() ?? '';
      for (const line of lines) take(line);
    }
  } finally {
    clearTimeout(timer);
  }
}
