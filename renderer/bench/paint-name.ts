import type { BenchActs } from './bench-acts.ts';
import { makeElement, makeSign } from '#renderer/grid/make-element.ts';
import type { BenchRow, FootRow, FootTotal, LineRow, SectionRow } from './view-model.ts';
import unseen from '#renderer/kit/unseen.module.css';
import css from './bench.module.css';

type SectionActs = Pick<BenchActs, 'fold' | 'showAll'>;

/** The name at the left of a row: a section's buttons, a line's name and unit, a sum's name. */
export function paintName(row: BenchRow, acts: SectionActs): HTMLElement {
  const line = makeElement('span', css['line']);
  if (row.kind === 'section') line.append(...sectionParts(row, acts));
  else line.append(...lineParts(row));
  return line;
}

export function sameName(a: BenchRow, b: BenchRow): boolean {
  return a === b || wordsOf(a).join('\n') === wordsOf(b).join('\n');
}

function wordsOf(row: BenchRow): readonly string[] {
  if (row.kind === 'foot') {
    const { figure = '', short = '', says = '' } = row.total ?? {};
    return [row.label, row.unit, figure, short, says];
  }
  if (row.kind === 'line') return [row.label, row.unit, row.aside];
  return [row.title, String(row.open), row.more, String(row.all), row.holds];
}

function sectionParts(row: SectionRow, acts: SectionActs): readonly Node[] {
  const fold = button(css['fold'], row.title, () => acts.fold(row.id));
  fold.setAttribute('aria-expanded', String(row.open));
  fold.prepend(makeSign('fold'));
  const parts: Node[] = [fold];
  if (row.holds !== '') parts.push(makeElement('span', css['holds'], row.holds));
  if (row.more !== '') {
    const more = button(css['more'], row.all ? 'fewer' : row.more, () => acts.showAll(row.id));
    more.setAttribute('aria-expanded', String(row.all));
    parts.push(more);
  }
  return parts;
}

function lineParts(row: LineRow | FootRow): readonly Node[] {
  const label = makeElement('span', css['label'], row.label);
  label.title = row.label;
  if (row.kind === 'line') {
    if (row.inset) label.classList.add(css['inset'] ?? '');
    if (row.aside !== '') label.append(' ', makeElement('span', css['aside'], row.aside));
  }
  const unit = makeElement('span', css['unit'], row.unit);
  return row.kind === 'foot' && row.total ? [label, ...totalParts(row.total), unit] : [label, unit];
}

/** `job 7,336.05`, behind the name of a sum. There is no room for words where a figure is a part: its sign says it. */
function totalParts({ figure, short, says }: FootTotal): readonly Node[] {
  if (figure === '' && short === '') return [];
  const words = makeElement('span', css['total'], figure === '' ? `job ${short}` : 'job');
  words.title = short === '' ? says : `${short}: ${says}`;
  if (figure === '') return [words];
  if (short !== '') words.append(' ', makeSign('wait'), makeElement('span', unseen['unseen'], short));
  return [words, makeElement('b', css['totalFigure'], figure)];
}

/** Not in the Tab order: its row's cell is, and Enter there does the same. */
function button(look: string | undefined, words: string, run: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.className = look ?? '';
  made.tabIndex = -1;
  made.textContent = words;
  made.addEventListener('click', run);
  return made;
}
