import { describe, expect, test } from 'vitest';
import { isUnitSymbol } from '#shared-calc/quantity/unit.ts';
import { isLineName, lineNameFault } from '#shared-calc/rule/line-name.ts';
import { someFunctions, someScope } from './some-scope.ts';

describe('lineNameFault', () => {
  test.each([
    ['', { kind: 'empty' }],
    ['Drainage', { kind: 'bad-letter', name: 'Drainage', found: 'D' }],
    ['drain gap', { kind: 'bad-letter', name: 'drain gap', found: ' ' }],
    ['drain-gap', { kind: 'bad-letter', name: 'drain-gap', found: '-' }],
    ['größe', { kind: 'bad-letter', name: 'größe', found: 'ö' }],
    ['2nd_lamp', { kind: 'bad-start', name: '2nd_lamp' }],
    ['_lamp', { kind: 'bad-start', name: '_lamp' }],
    ['mm', { kind: 'is-unit', name: 'mm' }],
    ['min', { kind: 'is-function', name: 'min' }],
    ['layer_volume', { kind: 'is-function', name: 'layer_volume' }],
    ['yes', { kind: 'is-answer', name: 'yes' }],
    ['a'.repeat(61), { kind: 'too-long', name: 'a'.repeat(61), limit: 60 }],
  ])('refuses %j', (name, fault) => {
    expect(lineNameFault(name, someFunctions)).toEqual(fault);
  });

  test.each([['a'], ['drain_gap'], ['lamp_300_need'], ['a'.repeat(60)], ['share']])('takes %s', (name) => {
    expect([lineNameFault(name, someFunctions), isUnitSymbol(name)]).toEqual([undefined, false]);
  });
});

describe('isLineName', () => {
  test('takes the names of the house recipe and no unit', () => {
    expect(someScope.lineNames.filter((name) => !isLineName(name))).toEqual([]);
    expect(['L', 'm2', 'yes', 'if', ''].filter(isLineName)).toEqual([]);
  });
});
