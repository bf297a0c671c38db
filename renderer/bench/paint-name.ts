import type { BenchActs } from './bench-acts.ts';
import { makeElement, makeSign } from '#renderer/grid/make-element.ts';
import type { BenchRow, FootRow, LineRow, SectionRow } from './view-model.ts';
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
  if (row.kind !== 'section') return [row.label, row.unit, row.kind === 'line' ? row.aside : ''];
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
  return [label, makeElement('span', css['unit'], row.unit)];
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
