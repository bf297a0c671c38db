import { signal } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';

/** The name of the paper on the page; it is the title of a PDF, and the name that is proposed for its file. */
export const paperName = signal<string | undefined>(undefined);

/** Before the next paint: a paper may be made in the moment it is printed. */
export function usePaperName(name: string): void {
  useLayoutEffect(() => {
    paperName.value = name;
    return () => {
      if (paperName.peek() === name) paperName.value = undefined;
    };
  }, [name]);
}
