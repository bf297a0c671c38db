import type { Tables } from './table.ts';

/** What the house knows: itself, its suppliers, goods, prices, rates and days. */
export const houseTables = {
  workshop: {
    columns: {
      id: 'text',
      name: 'text',
      place: 'text',
      letterhead: 'text',
      terms: 'text',
      payment: 'text',
      currency: 'text',
      coinDecimals: 'integer',
      altitudeM: 'real',
      unitsShown: 'json',
      decimalComma: 'yes no',
      oldPriceDays: 'integer',
      openWeekdays: 'json',
      depositShare: 'real',
      depositStepCoins: 'integer',
      quoteValidDays: 'integer',
      contingencyShare: 'real',
      warrantyShare: 'real',
      plantLossShare: 'real',
      discountShare: 'real',
      priceStepCoins: 'integer',
      pressureKpa: 'real',
      electricityPerKwh: 'real?',
      waterPerL: 'real?',
    },
  },
  supplier: {
    columns: {
      id: 'text',
      name: 'text',
      sells: 'text',
      leadDays: 'integer',
      tankLeadDays: 'integer?',
      carriageCoins: 'integer',
      freeFromCoins: 'integer?',
      minimumCoins: 'integer?',
      deliveryWeekdays: 'json?',
      note: 'text',
    },
  },
  tank: {
    columns: {
      id: 'text',
      label: 'text',
      shape: 'text',
      insideLengthMm: 'real?',
      insideDepthMm: 'real?',
      insideHeightMm: 'real?',
      frontBowMm: 'real?',
      sideReturnMm: 'real?',
      damHeightMm: 'real?',
      frontVentMm: 'real?',
      glassMm: 'real?',
      baseGlassMm: 'real?',
      supplier: 'text?',
      clientsOwn: 'yes no',
      note: 'text',
    },
  },
  material: {
    columns: {
      id: 'text',
      label: 'text',
      unit: 'text',
      supplier: 'text?',
      sale: 'text',
      keeps: 'yes no',
      leadDays: 'integer?',
      note: 'text',
    },
  },
  pack: {
    columns: { id: 'text', material: 'text', amount: 'real' },
  },
  packPrice: {
    columns: { id: 'text', pack: 'text', from: 'text', priceCoins: 'integer' },
  },
  plant: {
    columns: {
      id: 'text',
      name: 'text',
      class: 'text',
      widthNowCm: 'real',
      widthLaterCm: 'real',
      lightLow: 'real',
      lightHigh: 'real',
      priceCoins: 'integer',
      dry: 'yes no',
      harm: 'text',
      leastFloorM2: 'real',
      note: 'text',
    },
  },
  cultureKind: {
    columns: {
      id: 'text',
      label: 'text',
      breeding: 'text',
      ratePerDay: 'real?',
      tubL: 'real',
      capacity: 'integer',
      harvestShare: 'real',
      harvestEveryDays: 'integer',
      yield: 'integer',
      firstHarvestDays: 'integer',
      productiveDays: 'integer?',
      lowestC: 'real',
      highestC: 'real',
      founders: 'integer',
      foundersNewLine: 'integer',
      note: 'text',
    },
  },
  rate: {
    columns: { id: 'text', label: 'text', coins: 'integer', per: 'text' },
  },
  taxClass: {
    columns: { id: 'text', label: 'text', share: 'real' },
  },
  margin: {
    columns: { id: 'text', label: 'text', share: 'real', taxClass: 'text', order: 'integer' },
  },
  closedDay: {
    columns: { id: 'text', from: 'text', to: 'text', label: 'text' },
  },
} as const satisfies Pick<
  Tables,
  | 'workshop'
  | 'supplier'
  | 'tank'
  | 'material'
  | 'pack'
  | 'packPrice'
  | 'plant'
  | 'cultureKind'
  | 'rate'
  | 'taxClass'
  | 'margin'
  | 'closedDay'
>;
