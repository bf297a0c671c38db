import type { ComponentChildren } from 'preact';
import type { BookContext, BookApi } from '#renderer/books/book-api.ts';
import { Fields } from '#renderer/kit/field.tsx';
import css from './workshop.module.css';

export interface WorkshopParts {
  readonly context: BookContext;
  readonly api: BookApi;
}

/** Settings that belong together, under their title. */
export function Group({ title, children }: { readonly title: string; readonly children: ComponentChildren }) {
  return (
    <section class={css['workshopGroup']}>
      <h2>{title}</h2>
      <Fields>{children}</Fields>
    </section>
  );
}
