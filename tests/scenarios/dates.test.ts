import { describe, expect, test } from 'vitest';
import { sayDecides, sayLate } from '#shared-calc/prepare/say-plan.ts';
import { demoPlan, mondayToFriday, stepDates } from '#tests/shared-calc/prepare/demo-plan.ts';

const wish = { handover: '2027-04-28', calendar: mondayToFriday };

describe('scenario 11: dates backward, T05 Full, handover 28 April 2027', () => {
  const plan = demoPlan({}, wish);

  test('the build is the settle-in before the handover, and every step before it in its own time', () => {
    expect([plan.build, plan.handover, plan.wanted, plan.late]).toEqual(['2027-04-07', '2027-04-28', '2027-04-28', 0]);
    expect(stepDates(plan)).toEqual({
      tank: ['2027-03-30', '2027-03-16'],
      hardscape: ['2027-03-30', '2027-03-23'],
      panel: ['2027-03-31'],
      plants: ['2027-03-04', '2027-02-26'],
      springtails: ['2027-03-10'],
      media: ['2027-04-05', '2027-03-31'],
      panes: ['2027-04-06', '2027-03-29'],
      lamps: ['2027-04-06', '2027-04-02'],
      leaves: ['2027-04-06'],
      build: ['2027-04-07'],
    });
  });

  test('the plants decide, and it is said so', () => {
    expect([plan.because, sayDecides(plan, { what: 'the library', days: {} }), sayLate(plan, {})]).toEqual([
      'plant quarantine',
      'Order plants by Friday 26 February or the library opens late.',
      undefined,
    ]);
  });

  test('care runs from the handover, on the next open day', () => {
    expect(plan.care).toEqual([
      { act: 'call', date: '2027-05-05' },
      { act: 'visit', date: '2027-05-26' },
      { act: 'quarterly visit', date: '2027-07-28' },
      { act: 'quarterly visit', date: '2027-10-27' },
      { act: 'quarterly visit', date: '2028-01-26' },
      { act: 'yearly visit', date: '2028-04-27' },
    ]);
  });

  test('a deposit on 8 March moves the handover to 6 May, 8 days late because of plant quarantine', () => {
    const late = demoPlan({}, { ...wish, deposit: '2027-03-08' });
    expect([late.build, late.handover, late.wanted, late.late, late.because]).toEqual([
      '2027-04-15',
      '2027-05-06',
      '2027-04-28',
      8,
      'plant quarantine',
    ]);
    expect(stepDates(late)['plants']).toEqual(['2027-03-16', '2027-03-10']);
    expect(late.care[0]).toEqual({ act: 'call', date: '2027-05-13' });
    expect(sayLate(late, {})).toBe(
      '8 days late because of plant quarantine: the handover moves from Wednesday 28 April to Thursday 6 May.',
    );
  });

  test('without the quarantine that deposit would have allowed the build on 30 March: tank 22, glued 23, cured 30', () => {
    const order = { job: { plant_quarantine: '0 d', springtail_seed: '1 each', springtails_need: '0 each' } };
    const earliest = demoPlan(order, { calendar: mondayToFriday, deposit: '2027-03-08' });
    expect([earliest.build, stepDates(earliest)['tank'], stepDates(earliest)['panel']]).toEqual([
      '2027-03-30',
      ['2027-03-22', '2027-03-08'],
      ['2027-03-23'],
    ]);
  });
});

describe('dates of other orders, worked by hand', () => {
  test('T07 Basic without a background, summer closing before it: the tank is in the day before the build', () => {
    // Handover Fri 3 Sep 2027 less 21 d is Fri 13 Aug. Closed 2-6 Aug.
    const plan = demoPlan({ sizes: ['T07'], job: { kit: 'basic' } }, { handover: '2027-09-03' });
    expect([plan.build, plan.because, stepDates(plan)]).toEqual([
      '2027-08-13',
      'plant quarantine',
      {
        hardscape: ['2027-08-12', '2027-07-29'],
        tank: ['2027-08-12', '2027-07-22'],
        plants: ['2027-07-14', '2027-07-08'],
        springtails: ['2027-07-16'],
        media: ['2027-08-11', '2027-07-30'],
        panes: ['2027-08-12', '2027-07-28'],
        lamps: ['2027-08-12', '2027-08-10'],
        leaves: ['2027-08-12'],
        build: ['2027-08-13'],
      },
    ]);
  });

  test('a build that falls into the summer closing is done on the Friday before it, and the handover stays', () => {
    // Wed 25 Aug less 21 d is Wed 4 Aug, closed; Fri 30 Jul is the last open day.
    const plan = demoPlan({}, { handover: '2027-08-25' });
    expect([plan.build, plan.handover, plan.late, stepDates(plan)['panel'], stepDates(plan)['tank']]).toEqual([
      '2027-07-30',
      '2027-08-25',
      0,
      ['2027-07-23'],
      ['2027-07-22', '2027-07-08'],
    ]);
  });

  test('the worked check of the ready date: deposit 19 July, tank 9 August, plants cleared 26 August', () => {
    const plan = demoPlan({}, { handover: '2027-09-10', deposit: '2027-07-19' });
    expect([plan.build, plan.handover, plan.late, plan.because]).toEqual([
      '2027-08-26',
      '2027-09-16',
      6,
      'plant quarantine',
    ]);
  });

  test('a dry-season tank needs no springtails; a quarantine tank no plants, no background, no settle-in', () => {
    expect(Object.keys(stepDates(demoPlan({ recipe: 'H3' }, wish)))).not.toContain('springtails');
    const quarantine = demoPlan({ recipe: 'H4', sizes: ['T03'] }, wish);
    expect([quarantine.build, quarantine.because, stepDates(quarantine)]).toEqual([
      '2027-04-28',
      'tank delivery',
      {
        tank: ['2027-04-27', '2027-04-13'],
        hardscape: ['2027-04-27', '2027-04-20'],
        media: ['2027-04-26', '2027-04-21'],
        panes: ['2027-04-27', '2027-04-19'],
        lamps: ['2027-04-27', '2027-04-23'],
        leaves: ['2027-04-27'],
        build: ['2027-04-28'],
      },
    ]);
  });

  test('in the Show kit the hole is drilled by the glass cutter and does not make the lamps later', () => {
    expect(stepDates(demoPlan({ job: { kit: 'show' } }, wish))['lamps']).toEqual(['2027-04-06', '2027-04-02']);
  });

  test("a client's tank is not ordered, and must be there a working day before the gluing", () => {
    const plan = demoPlan({ job: { client_tank: 'yes' } }, wish);
    expect([plan.clientTank, stepDates(plan)['tank'], plan.steps.find(({ step }) => step === 'hardscape')]).toEqual([
      true,
      ['2027-03-30'],
      { step: 'hardscape', state: 'open', date: '2027-03-30', orderBy: '2027-03-22' },
    ]);
  });

  test('without a deposit, an order-by day that is past today makes it late as well', () => {
    // Mon 1 Mar + 4 working days is Fri 5 Mar; Tue 9 Mar + 30 d is Thu 8 Apr.
    const plan = demoPlan({}, { ...wish, on: '2027-03-01' });
    expect([plan.build, plan.handover, plan.late, plan.because]).toEqual([
      '2027-04-08',
      '2027-04-29',
      1,
      'plant quarantine',
    ]);
    expect(demoPlan({}, { ...wish, on: '2027-02-26' }).late).toBe(0);
  });
});
