import { describe, expect, test } from 'vitest'
import type { Asked } from '../../core/draft/choices.ts'
import type { Construction } from '../../core/draft/construction.ts'
import { CONSTRUCTIONS, draftGarment } from '../../core/draft/constructions.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'

const failing = (id: string, choices: Asked, body: object): string[] =>
  draftGarment(id, bodyOf(body), choices, 'mm')
    .fit.filter(({ status }) => status === 'fails')
    .map((check) => check.id)
    .sort()

const BROAD = { ...WOMAN, bustGirth: 1320, shoulderLength: 150 }
const WAISTED = { ...WOMAN, waistGirth: 1150, hipGirth: 1160 }
const HIPPED = { ...WOMAN, hipGirth: 1500 }
/** A thin upper arm on a strong forearm and hand. */
const TAPERED = {
  ...WOMAN,
  upperArmGirth: 190,
  elbowGirth: 240,
  forearmGirth: 250,
  wristGirth: 185,
  handGirth: 290,
}
const CHILD = {
  ...{
    stature: 1080,
    cervicalHeight: 880,
    waistHeight: 640,
    hipHeight: 520,
    insideLegHeight: 480,
    kneeHeight: 285,
  },
  ...{
    headGirth: 510,
    neckBaseGirth: 275,
    neckGirth: 255,
    shoulderLength: 85,
    bustGirth: 580,
    waistGirth: 540,
  },
  ...{
    hipGirth: 610,
    armLength: 370,
    upperArmGirth: 175,
    elbowGirth: 165,
    forearmGirth: 160,
    wristGirth: 120,
  },
  ...{ handGirth: 140, calfGirth: 220 },
}
const SMALL_FOOT = { ...WOMAN, heelGirth: 300, footLength: 220 }

/** A choice, or a body, that a garment cannot suit, and the checks that must say so: these and no others. */
const PLANTED: [id: string, wrong: string, choices: Asked, body: object, told: string[]][] = [
  ['overtunic', 'ease that lets nothing be worn beneath', { chestEase: 60 }, WOMAN, ['chest']],
  ['overtunic', 'a hem that trails', { length: 1400 }, WOMAN, ['floor']],
  ['overtunic', 'a waist wider than the chest', { chestEase: 60 }, WAISTED, ['waist']],
  [
    'overtunic',
    'gores from the hip on broad hips',
    { goreTop: 'hip', chestEase: 60 },
    HIPPED,
    ['hip', 'seat'],
  ],
  ['overtunic', 'an armhole too tight for the arm', { armholeEase: 20, gusset: 40 }, WOMAN, ['biceps']],
  ['overtunic', 'a sleeve too narrow', { wristWidth: 200 }, WOMAN, ['elbow', 'forearm', 'hand']],
  ['overtunic', 'a neck that slips off', { neckEase: 230, neck: 'boat' }, WOMAN, ['neckStays']],
  ['overtunic', 'gores too narrow to stride in', { goreSpread: 50 }, WOMAN, ['stride']],
  ['overtunic', 'a neck slit too short for the head', { slitLength: 20 }, WOMAN, ['head']],
  ['shift', 'gores too narrow to stride in', { goreWidth: 30, hemLevel: 'ankle' }, WOMAN, ['stride']],
  ['shift', 'panels too narrow for the body', { panelWidth: 430, goreWidth: 90 }, WOMAN, ['chest']],
  ['shift', 'an armhole too tight for the arm', { armholeEase: 0, gusset: 40 }, WOMAN, ['biceps']],
  ['shift', 'a waist wider than the panels', { panelWidth: 325 }, WAISTED, ['chest', 'waist']],
  ['shift', 'hips wider than its gores', { panelWidth: 530, goreWidth: 30 }, HIPPED, ['hip', 'seat']],
  [
    'shift',
    'a straight sleeve no wider than a thin upper arm',
    { armholeEase: 0, gusset: 40, sleeve: 'wrist' },
    TAPERED,
    ['biceps', 'elbow', 'forearm', 'hand'],
  ],
  ['shift', 'a neck too small for the head', { neckWidth: 120 }, WOMAN, ['head']],
  ['shift', 'a low hem', { length: 1400 }, WOMAN, ['floor']],
  [
    'shift',
    'a hemmed neck wider than the shoulders',
    { neckEnd: 'hemmed', neckWidth: 380 },
    WOMAN,
    ['neckStays'],
  ],
  ['smock', 'a low hem', { length: 1400 }, WOMAN, ['floor']],
  ['smock', 'panels too narrow for the body', { panelWidth: 325 }, WOMAN, ['chest', 'waist']],
  ['smock', 'hips wider than its gores', { panelWidth: 530, goreWidth: 60 }, HIPPED, ['hip', 'seat']],
  ['smock', 'gores too narrow to stride in', { goreWidth: 30, hemLevel: 'ankle' }, WOMAN, ['stride']],
  [
    'smock',
    'a straight sleeve no wider than a thin upper arm, open a little way',
    { armholeEase: 0, gusset: 40, cuffOpening: 40 },
    TAPERED,
    ['biceps', 'cuffCloses', 'elbow', 'forearm', 'hand'],
  ],
  [
    'smock',
    'a slit too short for the head',
    { slitLength: 80, neckHeight: 'high' },
    { ...WOMAN, headGirth: 640 },
    ['head'],
  ],
  ['shirt', 'a collar that does not close', { collarLength: 320 }, WOMAN, ['collarCloses']],
  ['shirt', 'wristbands that do not close', { cuffLength: 150 }, WOMAN, ['cuffCloses']],
  ['shirt', 'a body too narrow', { bodyWidth: 410 }, WOMAN, ['chest', 'hip', 'waist']],
  ['shirt', 'wrists that open too little', { cuffOpening: 40 }, TAPERED, ['hand']],
  ['shirt', 'a slit too short for the head', { slitLength: 80 }, WOMAN, ['head']],
  ['shirt', 'a tail that trails', { backLength: 1000 }, CHILD, ['floor']],
  [
    'shirt',
    'an armhole too shallow for the arm',
    { armholeDepth: 100, gusset: 40, cuffLength: 200 },
    WOMAN,
    ['biceps'],
  ],
  ['hood', 'a closed neck the head does not pass', { hoodWidth: 260 }, WOMAN, ['head']],
  ['hood', 'a cape too scant for the shoulders', { capeSpread: 60 }, WOMAN, ['shoulders']],
  ['hood', 'an opening too small for the face', { faceOpening: 200 }, WOMAN, ['face']],
  [
    'circleCloak',
    'a half circle set plain, which gapes',
    { circle: 'half', neckFit: 'plain' },
    WOMAN,
    ['cloakShoulders'],
  ],
  ['circleCloak', 'a cloak longer than the wearer', { cloakLength: 1500 }, WOMAN, ['floor']],
  ['circleCloak', 'a hood too shallow', { hooded: true, hoodWidth: 220 }, WOMAN, ['hoodAround']],
  [
    'hose',
    'more taken off than the cloth gives',
    { takenIn: 10, clothStretch: 4 },
    WOMAN,
    ['ball', 'calf', 'instep', 'knee', 'thigh'],
  ],
  ['hose', 'an ankle the heel does not pass', { ankleSlit: 0 }, WOMAN, ['heel']],
  ['hose', 'nothing, for a small foot', {}, SMALL_FOOT, []],
  [
    'strapDress',
    'gores too narrow for hip and stride',
    { goreSpread: 50 },
    { ...WOMAN, hipGirth: 1300 },
    ['hip', 'seat', 'stride'],
  ],
  ['strapDress', 'straps too short', { strapLength: 150 }, WOMAN, ['strap']],
  ['strapDress', 'a tube too narrow to go on', { chestEase: 20 }, WOMAN, ['chest', 'goesOver']],
  ['strapDress', 'a waist wider than the tube', { chestEase: 120 }, WAISTED, ['waist']],
  ['strapDress', 'a hem on the ground', { dressLength: 1300 }, WOMAN, ['floor']],
  ['sidelessOvergown', 'gores too narrow to stride in', { goreSpread: 50 }, WOMAN, ['stride']],
  ['sidelessOvergown', 'hips without room', { hipEase: 0 }, WOMAN, ['hip']],
  ['sidelessOvergown', 'a hem on the ground', { length: 1450 }, WOMAN, ['floor']],
  [
    'sidelessOvergown',
    'a neck too shallow for the head',
    { neckDepth: 60 },
    { ...WOMAN, headGirth: 640 },
    ['head'],
  ],
  [
    'lacedKirtle',
    'an opening that ends above the waist',
    { openingLength: 150 },
    { ...WOMAN, waistGirth: 640 },
    ['goesOver'],
  ],
  ['lacedKirtle', 'a wrist too narrow for the hand', { wristWidth: 170 }, WOMAN, ['hand']],
  ['lacedKirtle', 'a bust too loose to support', { bustEase: 30 }, WOMAN, ['supports']],
  ['lacedKirtle', 'hips without room', { hipEase: 0 }, WOMAN, ['hip']],
  ['lacedKirtle', 'a sleeve too narrow for the arm', { armEase: 0 }, WOMAN, ['biceps']],
  ['lacedKirtle', 'gores too narrow to stride in', { goreSpread: 50 }, WOMAN, ['stride']],
  ['lacedKirtle', 'a hem on the ground', { length: 1450 }, WOMAN, ['floor']],
  ['petticoat', 'hips that a short opening does not let through', { fastening: 'hooks' }, HIPPED, ['goesOn']],
  ['petticoat', 'too little cloth for the hips', { fullness: 1.5 }, { ...WOMAN, waistGirth: 635 }, ['hip']],
  ['petticoat', 'a hem on the ground', { skirtLength: 1040 }, WOMAN, ['floor']],
  ['drawers', 'legs too narrow', { hipEase: 60 }, WOMAN, ['hip', 'thigh']],
  ['drawers', 'a rise too short', { rise: 200 }, { ...WOMAN, totalCrotchLength: 700 }, ['seatDepth']],
  ['drawers', 'legs on the ground', { drawersLength: 'ankle' }, WOMAN, ['floor']],
  ['apron', 'ties too short', { tieLength: 200 }, WOMAN, ['ties']],
  ['apron', 'a hem on the ground', { skirtLength: 1100 }, WOMAN, ['floor']],
  ['kerchief', 'a square too small to tie', { side: 400 }, WOMAN, ['ties']],
  ['veil', 'a veil too short to reach the shoulders', { veilLength: 600 }, WOMAN, ['covers']],
  ['wimple', 'a wimple too short to be pinned', { wimpleLength: 600 }, WOMAN, ['reaches']],
  ['coif', 'a coif too narrow', { coifWidth: 380 }, WOMAN, ['around']],
  ['coif', 'a coif too shallow', { coifDepth: 180 }, WOMAN, ['depth']],
  ['shirt', 'nothing, by default, on a broad man', {}, { ...BROAD, bustGirth: 1100 }, []],
]

/** Every check that a garment's report may hold: each way of making it that its choices offer, one at a time. */
const checksOf = ({ id, choices }: Construction): string[] => {
  const ways = Object.entries(choices).flatMap(([choice, of]): Asked[] => {
    if (of.kind === 'yesNo') return [{ [choice]: true }, { [choice]: false }]
    return of.kind === 'option' ? of.options.map((option) => ({ [choice]: option })) : []
  })
  const reports = [{}, ...ways].map((asked) => draftGarment(id, bodyOf(WOMAN), asked, 'mm').fit)
  return [...new Set(reports.flat().map((check) => check.id))]
}

describe('a planted bad choice makes the right check fail', () => {
  test.each(PLANTED)('%s: %s', (id, _, choices, body, told) => {
    expect(failing(id, choices, body)).toEqual([...told].sort())
  })

  // The undertunic has a test of its own.
  test.each(CONSTRUCTIONS.filter(({ id }) => id !== 'goredUndertunic').map((one) => [one.id, one] as const))(
    '%s: there is one for every check',
    (id, construction) => {
      const planted = new Set(PLANTED.filter(([of]) => of === id).flatMap(([, , , , told]) => told))
      expect(checksOf(construction).filter((check) => !planted.has(check))).toEqual([])
    },
  )
})
