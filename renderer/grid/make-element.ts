import type { SignName } from '#renderer/frame/sign.tsx';

const svg = 'http://www.w3.org/2000/svg';

export function makeElement(name: string, look: string, words = ''): HTMLElement {
  const made = document.createElement(name);
  made.className = look;
  made.textContent = words;
  return made;
}

/** A sign from the page's drawings, hidden from screen readers. */
export function makeSign(name: SignName, look: 'sign' | 'chevron' = 'sign'): SVGElement {
  const drawing = document.createElementNS(svg, 'svg');
  drawing.setAttribute('class', look);
  drawing.setAttribute('aria-hidden', 'true');
  const use = document.createElementNS(svg, 'use');
  use.setAttribute('href', `#s-${name}`);
  drawing.append(use);
  return drawing;
}

/** Screen readers read one sentence in place of what is painted. */
export function spokenAs(painted: HTMLElement, spoken: string): HTMLElement {
  painted.setAttribute('aria-hidden', 'true');
  const both = makeElement('span', 'spoken');
  both.append(painted, makeElement('span', 'unseen', spoken));
  return both;
}
