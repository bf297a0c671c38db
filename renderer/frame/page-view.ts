import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { PlaceAct, QuietLineActs, QuietLineView } from './frame-view.ts';
import type { Route } from './place-route.ts';

/** What a place puts on the desk. */
export interface PlaceView {
  readonly about: string;
  readonly aside: string;
  readonly acts: readonly PlaceAct[];
  readonly work: ComponentChildren;
  /** The working panel, where the place has one. */
  readonly slip?: ComponentChildren;
  readonly find?: FindView;
}

export interface FindView {
  readonly label: string;
  readonly placeholder: string;
  readonly options: readonly string[];
  /** Goes there; `false` where nothing is called so. */
  readonly go: (words: string) => boolean;
}

/** What the page needs from the store. */
export interface PageView {
  readonly workshop: ReadonlySignal<string>;
  readonly line: ReadonlySignal<QuietLineView>;
  readonly lineActs: QuietLineActs;
  /** Keys told at the foot of each place. */
  readonly keys: readonly (readonly [key: string, does: string])[];
  /** Called within a component: signals it reads are followed. */
  readonly place: (route: Route) => PlaceView;
  readonly nextFlag: (back: boolean) => void;
  /** Says in the quiet line what could not be done. */
  readonly refuse: (sentence: string) => void;
  /** The person goes on to something else. */
  readonly moveOn: () => void;
}
