import flagLook from '#renderer/kit/flag.module.css';
import { makeElement, makeFigure, makeSaid, makeSign } from '#renderer/grid/make-element.ts';
import type { BoxView, FlagView, FootBox } from './view-model.ts';
import css from './bench.module.css';

/** The content of a cell in the grid: words at the left, figure at the right. */
export function paintBox(box: BoxView): HTMLElement {
  const root = makeForm(box.form);
  if (box.look === 'headline') root.classList.add(css['headline'] ?? '');
  else if (box.look !== 'plain') root.dataset['state'] = box.look;
  if (box.source !== 'house') root.dataset['source'] = box.source;
  if (box.closed) root.dataset['closed'] = '';
  if (box.said !== '' || box.sign) root.append(makeSaid(...(box.sign ? [makeSign(box.sign)] : []), box.said));
  if (box.figure !== '') root.append(figurePart(box.figure));
  return root;
}

/** One figure of the foot with its flags, or all flags of a size. */
export function paintFootBox(box: FootBox): HTMLElement {
  if (box.figure === '') {
    const list = makeForm('flags');
    list.append(...box.flags.map(flagPart));
    return list;
  }
  const root = makeForm('flat');
  if (box.flags.length > 0) root.append(makeSaid(...box.flags.map(flagPart)));
  root.append(figurePart(box.figure));
  return root;
}

/** What is painted of a cell around its figure. */
const frame = ['said', 'look', 'source', 'form', 'sign', 'closed'] as const;

/** Whether two cells look and read the same; then the cell is not repainted. */
export function sameBox(a: BoxView | undefined, b: BoxView | undefined): boolean {
  if (a === b) return true;
  return a !== undefined && b !== undefined && a.figure === b.figure && a.spoken === b.spoken && sameFrame(a, b);
}

/** Whether two cells look the same except for their figures. */
export function sameFrame(a: BoxView, b: BoxView): boolean {
  return figureKind(a.figure) === figureKind(b.figure) && frame.every((part) => a[part] === b[part]);
}

export function sameFootBox(a: FootBox, b: FootBox): boolean {
  return a === b || (a.figure === b.figure && a.spoken === b.spoken && sameFootFrame(a, b));
}

export function sameFootFrame(a: FootBox, b: FootBox): boolean {
  return figureKind(a.figure) === figureKind(b.figure) && flagWords(a) === flagWords(b);
}

/** A figure up to this length always has room, characters; a longer one gives way to the words next to it. */
const shortFigure = 10;

function figureKind(figure: string): 'none' | 'short' | 'long' {
  if (figure === '') return 'none';
  return figure.length > shortFigure ? 'long' : 'short';
}

function figurePart(figure: string): HTMLElement {
  return makeFigure(figure, figureKind(figure) === 'short' ? css['short'] : undefined);
}

function flagWords(box: FootBox): string {
  return box.flags.map((flag) => flag.says).join();
}

function flagPart({ look, sign, says }: FlagView): HTMLElement {
  const flag = makeElement('span', flagLook['flag']);
  flag.dataset['state'] = look;
  flag.append(makeSign(sign), says);
  return flag;
}

function makeForm(form: 'well' | 'flat' | 'flags'): HTMLElement {
  const root = makeElement('span', css[form]);
  root.dataset['form'] = form;
  return root;
}
