import { signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { benchMetrics } from './bench-metrics.ts';
import type { BenchMetrics, Room } from './bench-metrics.ts';
import type { BenchView } from './view-model.ts';

export interface FollowedRoom {
  readonly metrics: ReadonlySignal<BenchMetrics>;
  /** Measures for the sizes shown now; the room itself is only asked for when it changes. */
  readonly measure: () => void;
  readonly leave: () => void;
}

/** Keeps the bench's sizes in step with its room and its tanks. */
export function followRoom(
  host: HTMLElement,
  view: () => BenchView,
  changed: (metrics: BenchMetrics) => void,
): FollowedRoom {
  let room = roomOf(host);
  const now = () =>
    benchMetrics(
      room,
      view().columns.map((column) => column.section),
    );
  const metrics = signal(now());
  const measure = () => {
    const next = now();
    if (JSON.stringify(next) === JSON.stringify(metrics.value)) return;
    metrics.value = next;
    changed(next);
  };
  const resized = new ResizeObserver(() => {
    room = roomOf(host);
    measure();
  });
  resized.observe(host);
  return { metrics, measure, leave: () => resized.disconnect() };
}

/** The room that the bench's host has now; asking makes the browser lay the page out. */
function roomOf(host: HTMLElement): Room {
  const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  return { width: host.clientWidth, pageWidth: window.innerWidth, pageHeight: window.innerHeight, rem };
}
