/** The median and the 95th of 100 of the times that `act` takes, in milliseconds; `first` runs before each, untimed. */
export interface Times {
  readonly median: number;
  readonly p95: number;
}

interface Asked {
  readonly times: number;
  readonly warm?: number;
}

export function measure({ times, warm = 3 }: Asked, act: (turn: number) => void): Times {
  for (let turn = 0; turn < warm; turn += 1) act(turn);
  const took: number[] = [];
  for (let turn = 0; turn < times; turn += 1) {
    const start = performance.now();
    act(warm + turn);
    took.push(performance.now() - start);
  }
  return timesOf(took);
}

export function timesOf(took: readonly number[]): Times {
  const sorted = took.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
  return { median: at(0.5), p95: at(0.95) };
}

export interface Told {
  readonly what: string;
  readonly took: string;
  /** The baseline, measured in the same run. */
  readonly floor: string;
  readonly ratio: string;
  readonly must: string;
}

export function ms(figure: number): string {
  return `${figure.toFixed(figure < 10 ? 2 : 1)} ms`;
}

export function us(figure: number): string {
  return `${figure.toFixed(2)} us`;
}

export function ratio(figure: number): string {
  return `x ${figure.toFixed(2)}`;
}
