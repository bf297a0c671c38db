/** Tells one page what the service sends; `away` and `back` say whether it answers. */
export type Hear = (data: unknown) => void;

const NAME = 'loamwright news';

/**
 * Listens to the service once for all tabs: a browser opens six connections to a host, and a listening tab keeps one for
 * itself. The tab that holds the lock listens and passes on what it hears; when it is closed, the next one takes over.
 */
export function listenTogether(address: string, hear: Hear): () => void {
  const channel = new BroadcastChannel(NAME);
  channel.onmessage = ({ data }) => hear(data);
  const closing = new AbortController();
  const listen = () =>
    new Promise<void>((done) => {
      const stop = listenHere(address, (data) => {
        hear(data);
        channel.postMessage(data);
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
  source.onmessage = ({ data }) => hear(JSON.parse(String(data)));
  return () => source.close();
}
