import { describe, expect, test } from 'vitest'
import type { Asked } from '../../core/draft/choices.ts'
import { CONSTRUCTIONS, draftGarment } from '../../core/draft/constructions.ts'
import { bodyOf, WOMAN } from '../support/bodies.ts'

const failing = (id: string, choices: Asked, body: object): string[] =>
  draftGarment(id, bodyOf(body), choices, 'mm')
    .fit.filter(({ status }) => status === 'fails')
    .map((check) => check.id)
    .sort()

const BROAD = { ...WOMAN, bustGirth: 1320, shoulderLength: 150 }
const STURDY = { ...WOMAN, upperArmGirth: 430, elbowGirth: 400 }
const SMALL_FOOT = { ...WOMAN, heelGirth: 300, footLength: 220 }

/** A choice, or a body, that a garment cannot suit, and the checks that must say so: these and no others. */
const PLANTED: [id: string, wrong: string, choices: Asked, body: object, told: string[]][] = [
  ['overtunic', 'ease that lets nothing be worn beneath', { chestEase: 60 }, WOMAN, ['chest']],
  ['overtunic', 'a hem that trails', { length: 1400 }, WOMAN, ['floor']],
  ['overtunic', 'a neck slit too short for the head', { slitLength: 20 }, WOMAN, ['head']],
  ['shift', 'gores too narrow to stride in', { goreWidth: 30, hemLevel: 'ankle' }, WOMAN, ['stride']],
  ['shift', 'panels too narrow for the body', { panelWidth: 430, goreWidth: 90 }, WOMAN, ['chest']],
  ['shift', 'an armhole too tight for the arm', { armholeEase: 40, gusset: 40 }, STURDY, []],
  [
    'shift',
    'a hemmed neck wider than the shoulders',
    { neckEnd: 'hemmed', neckWidth: 380 },
    WOMAN,
    ['neckStays'],
  ],
  ['smock', 'a low hem', { length: 1400 }, WOMAN, ['floor']],
  [
    'smock',
    'a slit too short for the head',
    { slitLength: 80, neckHeight: 'high' },
    { ...WOMAN, headGirth: 640 },
    ['head'],
  ],
  ['shirt', 'a collar that does not close', { collarLength: 320 }, WOMAN, ['collarCloses']],
  ['shirt', 'wristbands that do not close', { cuffLength: 150 }, WOMAN, ['cuffCloses']],
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
  ['strapDress', 'a hem on the ground', { dressLength: 1300 }, WOMAN, ['floor']],
  ['sidelessOvergown', 'gores too narrow to stride in', { goreSpread: 50 }, WOMAN, ['stride']],
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
  ['veil', 'a veil too short to reach the shoulders', { veilLength: 600 }, WOMAN, ['covers']],
  ['wimple', 'a wimple too short to be pinned', { wimpleLength: 600 }, WOMAN, ['reaches']],
  ['coif', 'a coif too narrow', { coifWidth: 380 }, WOMAN, ['around']],
  ['coif', 'a coif too shallow', { coifDepth: 180 }, WOMAN, ['depth']],
  ['shirt', 'nothing, by default, on a broad man', {}, { ...BROAD, bustGirth: 1100 }, []],
]

describe('a planted bad choice makes the right check fail', () => {
  test.each(PLANTED)('%s: %s', (id, _, choices, body, told) => {
    expect(failing(id, choices, body)).toEqual(told)
  })

  test('in every garment that is drafted to a body', () => {
    // The undertunic and the small garments have such tests of their own.
    const elsewhere = ['goredUndertunic', 'petticoat', 'drawers', 'apron', 'kerchief', 'alteration']
    const planted = new Set([
      ...elsewhere,
      ...PLANTED.filter(([, , , , told]) => told.length > 0).map(([id]) => id),
    ])
    expect(CONSTRUCTIONS.map(({ id }) => id).filter((id) => !planted.has(id))).toEqual([])
  })
})
