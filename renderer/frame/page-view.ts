import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { PlaceAct, QuietLineActs, QuietLineView } from './frame-view.ts';
import type { Route } from './place-route.ts';

/** What a view shows on the page. */
export interface PlaceView {
  readonly about: string;
  readonly aside: string;
  readonly acts: readonly PlaceAct[];
  readonly work: ComponentChildren;
  /** The side panel, if the view has one. */
  readonly sidePanel?: ComponentChildren;
  readonly find?: FindView;
}

export interface FindView {
  readonly label: string;
  readonly placeholder: string;
  readonly options: readonly string[];
  /** Goes to what has this name; `false` if nothing has. */
  readonly go: (words: string) => boolean;
}

/** What the page needs from the store. */
export interface PageView {
  readonly workshop: ReadonlySignal<string>;
  readonly line: ReadonlySignal<QuietLineView>;
  readonly lineActs: QuietLineActs;
  /** Keys listed at the foot of each view. */
  readonly keys: readonly (readonly [key: string, does: string])[];
  /** Call within a component: it follows the signals that are read. */
  readonly place: (route: Route) => PlaceView;
  readonly nextFlag: (back: boolean) => void;
  /** Shows in the status line what failed. */
  readonly refuse: (sentence: string) => void;
  /** The user does something else. */
  readonly moveOn: () => void;
}
