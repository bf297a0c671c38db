export interface Slots {
  /** The slot of a name; a new name gets one now, a freed slot first. */
  readonly of: (name: string) => number;
  readonly has: (name: string) => boolean;
  readonly named: (slot: number) => string | undefined;
  readonly names: () => readonly string[];
  readonly free: (name: string) => void;
}

/** Slot numbers 0, 1, 2 ... given to names and freed again; a name never changes its slot. */
export function openSlots(): Slots {
  const taken = new Map<string, number>();
  const back: string[] = [];
  const freed: number[] = [];
  return {
    of(name) {
      const known = taken.get(name);
      if (known !== undefined) return known;
      const slot = freed.pop() ?? back.length;
      taken.set(name, slot);
      back[slot] = name;
      return slot;
    },
    has: (name) => taken.has(name),
    named: (slot) => (taken.get(back[slot] ?? '') === slot ? back[slot] : undefined),
    names: () => [...taken.keys()],
    free(name) {
      const slot = taken.get(name);
      if (slot === undefined) return;
      taken.delete(name);
      freed.push(slot);
    },
  };
}
