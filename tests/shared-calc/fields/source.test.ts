import { describe, expect, test } from 'vitest';
import { demoRecords } from '#tests/demo-bench.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** A figure or a choice, not a rule. */
function isGiven({ role, text }: Line): boolean {
  return role === 'given' || /^\d[\d.]* ?[\w%/]*$/.test(text);
}

describe('sourceFields', () => {
  const { line, material, rate } = demoRecords();

  test('every given figure of the shipped recipes says where it is from', () => {
    const given = [...line.values()].filter(isGiven);

    expect(given.length).toBeGreaterThan(300);
    expect(given.filter(({ source }) => source === undefined).map(({ id }) => id)).toEqual([]);
  });

  test('so does every material and every rate', () => {
    const unmarked = [...material.values(), ...rate.values()].filter(({ source }) => source === undefined);

    expect(unmarked.map(({ id }) => id)).toEqual([]);
  });

  test('a published figure names its publication, and nothing of the house claims to be measured', () => {
    const all = [...line.values(), ...material.values(), ...rate.values()];

    expect(all.filter(({ source, sourceNote }) => source === 'published' && !/\d{3}/.test(sourceNote ?? ''))).toEqual(
      [],
    );
    expect(all.filter(({ source }) => source === 'measured' || source === 'supplier')).toEqual([]);
  });
});
