import { actNames } from '#shared-calc/words/act-names.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';

/** Prints the paper on the page: the print style hides everything else. The same in the browser and on the desktop. */
export function printAct(page: Window): PlaceAct {
  return { label: actNames.print, hint: 'to a printer or into a file', run: () => page.print() };
}
