import { render, type ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import css from './print-on-ask.module.css';

interface OnAskParts {
  /** What is printed in place of the page. */
  readonly paper: () => ComponentChildren;
}

/**
 * A paper that is made when the page is printed, and gone after it. The browser lays out what is there once the event
 * is over, so it is rendered at once.
 */
export function PrintOnAsk({ paper }: OnAskParts) {
  const host = useRef<HTMLDivElement>(null);
  const now = useRef(paper);
  now.current = paper;
  useEffect(() => {
    const to = host.current;
    if (!to) return undefined;
    const put = () => render(now.current(), to);
    const leave = () => render(null, to);
    window.addEventListener('beforeprint', put);
    window.addEventListener('afterprint', leave);
    return () => {
      leave();
      window.removeEventListener('beforeprint', put);
      window.removeEventListener('afterprint', leave);
    };
  }, []);
  return <div ref={host} class={css['onAsk']} />;
}
