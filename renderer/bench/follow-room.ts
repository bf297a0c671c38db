import { signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { benchMetrics } from './bench-metrics.ts';
import type { BenchMetrics, Room } from './bench-metrics.ts';
import type { BenchView } from './view-model.ts';

export interface FollowedRoom {
  readonly metrics: ReadonlySignal<BenchMetrics>;
  /** Metrics for the sizes shown now. The room is measured only when it changes. */
  readonly measure: () => void;
  readonly leave: () => void;
}

/** Updates the bench's metrics when its room or its tanks change. */
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

/** The room the bench's host has now. Reading it forces a layout. */
function roomOf(host: HTMLElement): Room {
  const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  return { width: host.clientWidth, pageWidth: window.innerWidth, pageHeight: window.innerHeight, rem };
}
