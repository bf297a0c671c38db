import { describe, expect, test } from 'vitest';
import { typedMeasures, emptyTank, readNewTank } from '#renderer/places/bench/new-tank.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { demoDay, demoRecords } from '#tests/renderer/demo-records.ts';

const context = derive(demoRecords(), demoDay);

describe('readNewTank', () => {
  test('from the outside panes, seams and frame are taken off, and how is noted', () => {
    const texts = emptyTank('T13');
    const tank = readNewTank(
      {
        ...texts,
        outside: { ...texts.outside, length: '912', depth: '457', height: '610', glass: '6', base: '6', topFrame: '4' },
        inside: { damHeightMm: '150', frontVentMm: '0' },
      },
      context,
    );
    expect(tank).toEqual({
      ok: true,
      value: {
        id: 'T13',
        label: '',
        shape: 'rectangle',
        clientsOwn: false,
        insideLengthMm: 900,
        insideDepthMm: 445,
        insideHeightMm: 600,
        glassMm: 6,
        baseGlassMm: 6,
        damHeightMm: 150,
        frontVentMm: 0,
        note: 'Length: 912 mm less 2 panes of 6 mm = 900 mm; Depth: 457 mm less 2 panes of 6 mm = 445 mm; Height: 610 mm less the base of 6 mm and 4 mm of frame = 600 mm',
      },
    });
  });

  test('a hexagon is asked for by its inside, and is as deep as it is long', () => {
    const texts = { ...emptyTank('T14'), shape: 'hexagon' as const, measured: 'inside' as const, clientsOwn: true };
    expect(typedMeasures(texts)).not.toContain('insideDepthMm');
    const tank = readNewTank(
      { ...texts, inside: { insideLengthMm: '300', insideHeightMm: '450', glassMm: '5' } },
      context,
    );
    expect(tank.ok && tank.value).toMatchObject({ insideLengthMm: 300, insideDepthMm: 300, clientsOwn: true });
  });

  test('a corner tank by its outside brings its side and its return along', () => {
    const texts = { ...emptyTank('T16'), shape: 'corner' as const };
    expect(typedMeasures(texts)).toEqual(['damHeightMm', 'frontVentMm']);
    const outside = { ...texts.outside, length: '592', sideReturn: '258.5', height: '606', glass: '6' };
    const tank = readNewTank({ ...texts, outside }, context);
    expect(tank.ok && tank.value).toMatchObject({ insideLengthMm: 580, insideDepthMm: 580, sideReturnMm: 250 });
  });

  test('a dam higher than the tank is refused', () => {
    const texts = { ...emptyTank('T15'), measured: 'inside' as const };
    expect(readNewTank({ ...texts, inside: { insideHeightMm: '100', damHeightMm: '150' } }, context)).toEqual({
      ok: false,
      fault: 'The dam is 150 mm and the tank only 100 mm high inside.',
    });
  });
});
