import { DEFAULT_SETTINGS } from './default-settings.ts'

/** Everyone and everything in it is invented. */
export const LETTERHEAD = {
  ...DEFAULT_SETTINGS.letterhead,
  name: 'Tenter Lane Workroom',
  address: ['The Old Fulling Mill', '4 Tenter Lane', 'Harrowby'],
  email: 'bench@tenterlane.example',
  phone: '01632 960 118',
}

/** Whom the sample workroom sews for, with measures as they were typed. */
export const CLIENTS = [
  {
    name: 'Þórunn Vale',
    address: ['2 Ferry Steps', 'Harrowby'],
    email: 'thorunn@mail.example',
    phone: '01632 960 231',
    note: 'Likes long sleeves. Allergic to lanolin: no greasy wool next to the skin.',
    measures: {
      ...{
        stature: '168',
        cervicalHeight: '143.5',
        headGirth: '56.5',
        neckBaseGirth: '38.5',
        shoulderLength: '12.4',
      },
      ...{
        bustGirth: '96',
        waistGirth: '79.5',
        hipGirth: '103',
        armLength: '58.5',
        upperArmGirth: '30',
        elbowGirth: '26.5',
      },
      ...{ forearmGirth: '25', wristGirth: '16.2', handGirth: '19', waistHeight: '103.5', hipHeight: '88' },
      ...{
        insideLegHeight: '78',
        kneeHeight: '46',
        calfGirth: '37',
        neckGirth: '34.5',
        underbustGirth: '82',
      },
      ...{ thighGirth: '60', kneeGirth: '37', ankleGirth: '22.5', heelGirth: '32.5', footLength: '24.5' },
    },
  },
  {
    name: 'Łucja Orme',
    address: ['Weir Cottage', 'Nether Harrowby'],
    email: 'lucja@mail.example',
    phone: '01632 960 257',
    note: '',
    measures: {
      ...{
        stature: '159',
        cervicalHeight: '136',
        headGirth: '55',
        neckBaseGirth: '39',
        shoulderLength: '11.8',
      },
      ...{
        bustGirth: '112',
        waistGirth: '98',
        hipGirth: '118',
        armLength: '54',
        upperArmGirth: '36',
        elbowGirth: '30',
      },
      ...{ forearmGirth: '27.5', wristGirth: '17', handGirth: '18.8', waistHeight: '97', hipHeight: '82.5' },
      ...{
        insideLegHeight: '72',
        kneeHeight: '43',
        calfGirth: '40',
        neckGirth: '35.5',
        underbustGirth: '97',
      },
      ...{ thighGirth: '68', kneeGirth: '41', ankleGirth: '24', heelGirth: '33', footLength: '23.5' },
    },
  },
  {
    name: 'Þórður Underhill',
    address: ['The Toll House', 'Harrowby'],
    email: 'thordur@mail.example',
    phone: '01632 960 304',
    note: 'Stands with his left shoulder lower.',
    measures: {
      ...{ stature: '181', cervicalHeight: '155', headGirth: '58.5', neckBaseGirth: '43', neckGirth: '39' },
      ...{ shoulderLength: '14.6', chestGirth: '104', waistGirth: '92', hipGirth: '102', armLength: '64' },
      ...{ upperArmGirth: '34', elbowGirth: '29.5', forearmGirth: '29', wristGirth: '18', handGirth: '22' },
      ...{
        waistHeight: '110',
        hipHeight: '94.5',
        insideLegHeight: '86',
        kneeHeight: '50',
        calfGirth: '39.5',
      },
      ...{ thighGirth: '59', kneeGirth: '39', ankleGirth: '24', heelGirth: '35.5', footLength: '27.5' },
    },
  },
  {
    name: 'Ἑλένη Marsh',
    address: ['Assize House Museum', 'Harrowby'],
    email: 'workroom@assize-house.example',
    phone: '01632 960 412',
    note: 'Buys for the museum’s guides.',
    measures: undefined,
  },
] as const

/** What it cuts from: mm, shrinkages in parts of one, a metre's price in minor units. */
export const CLOTHS = [
  {
    name: 'White linen, plain weave',
    fibre: 'linen',
    ...{ width: 1500, selvedge: 0, warpShrinkage: 0.05, weftShrinkage: 0.03, rightSide: false, nap: false },
    ...{ thickness: 0.4, increment: 100, priceMinor: 1650, currency: 'GBP' },
    ...{ supplier: 'Weir Mill', leadDays: 8 },
    note: '185 g/m². Washed once at 60 °C before cutting.',
  },
  {
    name: 'Natural linen, narrow loom',
    fibre: 'linen',
    ...{ width: 914.4, selvedge: 0, warpShrinkage: 0.06, weftShrinkage: 0.04, rightSide: false, nap: false },
    ...{ thickness: 0.5, increment: 100, priceMinor: 1320, currency: 'GBP' },
    ...{ supplier: 'Oda Lind, weaver', leadDays: 21 },
    note: 'A yard wide. Unbleached, softens in the wash.',
  },
  {
    name: 'Twill wool, madder red',
    fibre: 'wool',
    ...{ width: 1520, selvedge: 10, warpShrinkage: 0.04, weftShrinkage: 0.03, rightSide: true, nap: false },
    ...{ thickness: 1.1, increment: 100, priceMinor: 3400, currency: 'GBP' },
    ...{ supplier: 'Weir Mill', leadDays: 12 },
    note: '340 g/m². Steamed, not washed hot.',
  },
] as const
