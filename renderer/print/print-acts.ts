import type { PlaceAct } from '#renderer/frame/frame-view.ts';

/** Prints what lies on the page: the sheet's own styles leave all but the paper off. The same in the browser and on the desktop. */
export function printAct(page: Window): PlaceAct {
  return { label: 'Print', hint: 'to a printer or into a file', run: () => page.print() };
}
