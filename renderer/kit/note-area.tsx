import type { ComponentProps } from 'preact';
import css from './note-area.module.css';

interface NoteAreaParts extends Omit<ComponentProps<'textarea'>, 'class' | 'className' | 'style'> {
  /** `log`: rows of readings, in figures of equal width. */
  readonly look?: 'note' | 'log';
}

/** A text field of several lines, as high as its text. */
export function NoteArea({ look = 'note', ...rest }: NoteAreaParts) {
  return <textarea {...rest} class={look === 'log' ? `${css['area']} ${css['log']}` : css['area']} />;
}
