/** What a tab hears: whether the service answers, or something that it sent. */
export type Heard = { readonly is: 'away' | 'back' } | { readonly is: 'sent'; readonly data: unknown };
type Hear = (heard: Heard) => void;

const NAME = 'loamwright news';

/**
 * Listens to the service once for all tabs: a browser opens six connections to a host, and a listening tab keeps one for
 * itself. The tab that holds the lock listens and passes on what it hears; when it is closed, the next one takes over.
 */
export function listenTogether(address: string, hear: Hear): () => void {
  const channel = new BroadcastChannel(NAME);
  channel.onmessage = ({ data }: MessageEvent<Heard>) => hear(data);
  const closing = new AbortController();
  const listen = () =>
    new Promise<void>((done) => {
      const stop = listenHere(address, (heard) => {
        hear(heard);
        channel.postMessage(heard);
      });
      closing.signal.addEventListener('abort', () => {
        stop();
        done();
      });
    });
  navigator.locks.request(NAME, { signal: closing.signal }, listen).catch(() => undefined);
  return () => {
    closing.abort();
    channel.close();
  };
}

function listenHere(address: string, hear: Hear): () => void {
  const source = new EventSource(address);
  let isAway = false;
  source.onerror = () => {
    if (!isAway) hear({ is: 'away' });
    isAway = true;
  };
  source.onopen = () => {
    if (isAway) hear({ is: 'back' });
    isAway = false;
  };
  source.onmessage = ({ data }) => hear({ is: 'sent', data: JSON.parse(String(data)) });
  return () => source.close();
}
