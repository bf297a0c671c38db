import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** Current width of an element, px; the guess until it is on the page. */
export function useWidth(of: RefObject<HTMLElement | null>, guess: number): number {
  const [width, setWidth] = useState(guess);
  useEffect(() => {
    const element = of.current;
    if (!element) return undefined;
    const fit = new ResizeObserver(() => element.clientWidth > 0 && setWidth(element.clientWidth));
    fit.observe(element);
    return () => fit.disconnect();
  }, []);
  return width;
}
