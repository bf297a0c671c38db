import type { SignName } from '#renderer/frame/sign.tsx';
import signLook from '#renderer/frame/sign.module.css';
import css from './cell.module.css';

const svg = 'http://www.w3.org/2000/svg';

export function makeElement(name: string, look: string | undefined, words = ''): HTMLElement {
  const made = document.createElement(name);
  made.className = look ?? '';
  made.textContent = words;
  return made;
}

/** A sign from the page's drawings, hidden from screen readers. */
export function makeSign(name: SignName): SVGElement {
  const drawing = document.createElementNS(svg, 'svg');
  drawing.setAttribute('class', signLook['sign'] ?? '');
  drawing.setAttribute('aria-hidden', 'true');
  const use = document.createElementNS(svg, 'use');
  use.setAttribute('href', `#s-${name}`);
  drawing.append(use);
  return drawing;
}

/** The words at the left of a cell. */
export function makeSaid(...words: readonly (Node | string)[]): HTMLElement {
  const said = makePart('said', css['said']);
  said.append(...words);
  return said;
}

/** The figure at the right of a cell. */
export function makeFigure(figure: string, look = ''): HTMLElement {
  return makePart('figure', `${css['figure']} ${look}`, figure);
}

/** The sentence of a cell for screen readers. */
export function makeSpoken(spoken: string): HTMLElement {
  return makePart('spoken', css['spoken'], spoken);
}

/** Screen readers read one sentence in place of what is painted. */
export function spokenAs(painted: HTMLElement, spoken: string): HTMLElement {
  painted.setAttribute('aria-hidden', 'true');
  const both = makeElement('span', css['both']);
  both.append(painted, makeSpoken(spoken));
  return both;
}

function makePart(part: CellPart, look: string | undefined, words = ''): HTMLElement {
  const made = makeElement('span', look, words);
  made.dataset['part'] = part;
  return made;
}

type CellPart = 'said' | 'figure' | 'spoken';

/** Writes the figure or the sentence of a drawn cell. */
export function writePart(cell: HTMLElement, part: CellPart, words: string): void {
  const text = cell.querySelector(`[data-part="${part}"]`)?.firstChild;
  if (text instanceof Text) text.data = words;
}
