import type { CurveInk } from './curve-spec.ts';

export type Ground = CurveInk | 'rule' | 'rule-strong' | 'paper-raised';

/**
 * The page's own colours, as the drawing wants them: what light and dark come to now. Only a property that takes a
 * colour tells that, so each is asked of a mark of its own.
 */
export function inksOf(host: HTMLElement): (name: Ground) => string {
  const marks = new Map<Ground, HTMLElement>();
  return (name) => {
    const mark = marks.get(name) ?? putMark(host, name);
    marks.set(name, mark);
    return getComputedStyle(mark).color;
  };
}

function putMark(host: HTMLElement, name: Ground): HTMLElement {
  const mark = host.ownerDocument.createElement('span');
  mark.className = `ink-mark of-${name}`;
  host.append(mark);
  return mark;
}
