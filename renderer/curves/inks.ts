import type { CurveInk } from './curve-spec.ts';

export type Ground = CurveInk | 'rule' | 'rule-strong' | 'paper-raised';

/**
 * The page's own colours, resolved for light or dark. Only a property that takes a colour returns the resolved value,
 * so each is read from an element of its own.
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
  mark.hidden = true;
  mark.style.color = `var(--${name === 'muted' ? 'ink-muted' : name})`;
  host.append(mark);
  return mark;
}
