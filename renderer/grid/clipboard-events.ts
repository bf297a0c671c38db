export interface ClipboardActs {
  /** Tab-separated text of the range, or `undefined` where nothing is chosen. */
  readonly copied: () => string | undefined;
  readonly clear: () => void;
  readonly paste: (text: string) => void;
}

/** Copy, cut and paste by the page's own events, which need no leave; a field being written in keeps its own. */
export function clipboardEvents(host: HTMLElement, acts: ClipboardActs): () => void {
  const stop = new AbortController();
  const copy = (event: ClipboardEvent, after?: () => void) => {
    const text = inField(event.target) ? undefined : acts.copied();
    if (text === undefined || !event.clipboardData) return;
    event.clipboardData.setData('text/plain', text);
    event.preventDefault();
    after?.();
  };
  host.addEventListener('copy', (event) => copy(event), { signal: stop.signal });
  host.addEventListener('cut', (event) => copy(event, acts.clear), { signal: stop.signal });
  host.addEventListener(
    'paste',
    (event) => {
      const text = inField(event.target) ? '' : (event.clipboardData?.getData('text/plain') ?? '');
      if (text === '') return;
      event.preventDefault();
      acts.paste(text);
    },
    { signal: stop.signal },
  );
  return () => stop.abort();
}

export function inField(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('input, textarea, select') !== null;
}
