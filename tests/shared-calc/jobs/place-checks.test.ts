import { answerOfState } from '#shared-calc/bench/check-state.ts';
import { describe, expect, test } from 'vitest';
import { placeChecks, type OuterSize, type Place } from '#shared-calc/jobs/place-checks.ts';
import { unasked } from '#shared-calc/fields/survey.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';

const wayIn = (narrowestMm: number | null) => ({ survey: { ...unasked, narrowestMm } });
const school: Place = { audience: 'Pupils of 8 to 11', animals: 'Small frogs', ...wayIn(780) };
/** T07 outside: 900 + 2 x 6 by 445 + 2 x 6. */
const t07: OuterSize = { lengthMm: 912, depthMm: 457 };

function checkOf(limit: 'way in' | 'audience', place: Partial<Place>, size: OuterSize = t07) {
  const found = placeChecks({ ...school, ...place }, size, plainDisplay).find((check) => check.limit === limit);
  if (!found) throw new Error(`no check of the ${limit}`);
  return found;
}

describe('placeChecks', () => {
  test.each([
    ['a door of 780 mm', t07, 780, true],
    ['a gap of 458 mm', t07, 458, true],
    ['a gap as wide as the tank is deep', t07, 457, false],
    ['a tank deeper than long goes by its length', { lengthMm: 400, depthMm: 900 }, 457, true],
    ['a cylinder goes by its width', { lengthMm: 612, depthMm: 612 }, 600, false],
    ['a hexagon goes by its overall width over its flat sides', { lengthMm: 712, depthMm: 618 }, 650, true],
  ])('the way in, %s', (_, size, narrowestMm, holds) => {
    expect(answerOfState(checkOf('way in', wayIn(narrowestMm), size).state)).toBe(holds);
  });

  test('it says how the tank is carried, both widths, and who decides', () => {
    expect(checkOf('way in', wayIn(400))).toEqual({
      limit: 'way in',
      level: 'stop',
      state: 'fails',
      says: 'Carried upright, never on its side, the tank is 457\u00a0mm at its narrowest outside; the way in is 400\u00a0mm at its narrowest.',
      decides: 'Crew leader',
    });
  });

  test('widths are said in the unit that the workshop reads', () => {
    const [check] = placeChecks(school, t07, { ...plainDisplay, unitsShown: { length: 'in' } });
    expect(check?.says).toContain('the way in is 30.71\u00a0in');
  });

  test('what nobody has measured is not known yet, and is said', () => {
    const { level, state, says } = checkOf('way in', wayIn(null));
    expect([level, state, says]).toEqual([
      'watch',
      'not known yet',
      'Carried upright, never on its side, the tank is 457\u00a0mm at its narrowest outside; nobody has measured the way in.',
    ]);
    expect(checkOf('way in', {}, { lengthMm: undefined, depthMm: 457 }).state).toBe('not known yet');
  });

  test.each([
    ['Pupils of 8 to 11', 'Small frogs', true],
    ['Nursery class, three mornings', 'Small frogs', false],
    ['Passengers of all ages', 'Small frogs', false],
    ['Children aged 3 and their parents', 'Geckos', false],
    ['children of 2 to 6 years', '', false],
    ['Staff, no under-fives', 'Small frogs', true],
    ['School, without any toddlers', 'Small frogs', true],
    ['Pupils of 14 to 18 years', 'Small frogs', true],
    ['Nursery class', 'none', true],
    ['', 'Small frogs', undefined],
    ['', 'Plants only', true],
  ])('"%s" with "%s"', (audience, animals, holds) => {
    expect(answerOfState(checkOf('audience', { audience, animals }).state)).toBe(holds);
  });

  test('where no child is told of, it says what was written down', () => {
    expect(checkOf('audience', { audience: ' Pupils of 8 to 11 ' }).says).toBe(
      'As written down: Pupils of 8 to 11. No child under five is told of.',
    );
  });

  test('about children the health lead decides, never the program', () => {
    const { level, says, decides } = checkOf('audience', { audience: 'Nursery class' });
    expect([level, says, decides]).toEqual([
      'stop',
      'Children under five may be near it: reptiles and amphibians should not be kept where they are.',
      'School or centre health lead, public-health office',
    ]);
  });
});
