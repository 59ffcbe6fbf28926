import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { oldNode } from '../electron/node-version.ts'

/**
 * `npm run demo`: the main job on a fresh sample workroom, without a screen. Records a client and her
 * measures, quotes an undertunic, accepts the quote, ticks the work and prints the papers into `demo/`.
 */
const refused = oldNode(process.versions.node)
if (refused !== undefined) {
  console.error(refused)
  process.exit(1)
}
const { answer, documentPath, openStore, readerOf, requests } = await import('../core/workroom.ts')
const { shellContext } = await import('../electron/context.ts')
const { say } = await import('../core/words/say.ts')
const { printMoney } = await import('../core/words/money.ts')
const { printMinutes } = await import('../core/words/time.ts')
type Estimate = import('../core/price/estimate.types.ts').Estimate

const folder = resolve(process.argv[2] ?? 'demo')
mkdirSync(folder, { recursive: true })
const scratch = mkdtempSync(join(tmpdir(), 'ellwand-demo-'))
const store = openStore(join(scratch, 'tenter-lane.ellwand'), { now: new Date().toISOString() })
const context = shellContext(store, () => {})
const reader = readerOf(context)

async function ask<T>(name: string, payload: unknown = {}): Promise<T> {
  const answered = await answer(requests, name, payload, context, reader)
  if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`)
  return answered.result as T
}

type Document = { document: { hash: string; name: string; kind: string; pages: number } }
async function printed(name: string, payload: unknown): Promise<void> {
  const { document } = await ask<Document>(name, payload)
  const file = join(folder, `${document.name}.pdf`)
  copyFileSync(documentPath(context, document.hash), file)
  console.log(`  ${file} (${document.pages} ${document.pages === 1 ? 'page' : 'pages'})`)
}

try {
  await ask('workroom.sample')
  const { client } = await ask<{ client: { id: string; name: string } }>('client.add', {
    name: 'Maud Ferrer-Þórsdóttir',
    address: ['9 Ropewalk', 'Harrowby'],
    email: 'maud@mail.example',
  })
  const { measurementSet } = await ask<{ measurementSet: { id: string } }>('measurementSet.add', {
    clientId: client.id,
    measures: {
      ...{
        stature: '171',
        cervicalHeight: '146.5',
        headGirth: '57',
        neckBaseGirth: '39,5',
        shoulderLength: '12.6',
      },
      ...{
        bustGirth: '38 1/2 in',
        waistGirth: '82',
        hipGirth: '106',
        armLength: '59',
        upperArmGirth: '31,5',
      },
      ...{ elbowGirth: '27.5', forearmGirth: '25.5', handGirth: '19', waistHeight: '106', hipHeight: '90' },
      ...{ insideLegHeight: '79.5', kneeHeight: '47', calfGirth: '38' },
    },
  })
  const { cloths } = await ask<{ cloths: { id: string; name: string }[] }>('cloths.list')
  const cloth = cloths.find(({ name }) => name.startsWith('White linen'))!
  const garment = { construction: 'goredUndertunic', measurementSetId: measurementSet.id, clothId: cloth.id }
  const estimate = await ask<Estimate>('garment.estimate', garment)
  const { quote } = await ask<{ quote: { id: string; number: string } }>('quote.save', {
    customerId: client.id,
    lines: [{ ...garment, wearerId: client.id }],
  })
  const { commission } = await ask<{
    commission: { id: string; number: string; garments: { id: string }[] }
  }>('quote.accept', {
    id: quote.id,
  })
  const garmentId = commission.garments[0]!.id
  // The linen is bought, and set aside for it as it comes.
  const { length } = await ask<{ length: { id: string } }>('stock.add', {
    ...{ clothId: cloth.id, length: `${estimate.purchase.toBuy} mm` },
  })
  await ask('stock.reserve', { id: length.id, garmentId })
  await ask('stage.tick', { garmentId, stage: 'prepare' })
  // The linen has been washed: it is measured again, and the garment laid on what is there.
  await ask('garment.washed', { garmentId, width: '145.5 cm', length: '3.5 m' })
  await ask('stage.tick', { garmentId, stage: 'cut' })

  const { draft, lay, purchase, sewing, price } = estimate
  const locale = reader.locale
  const seams = Object.values(draft.totals.seams).reduce((sum, length) => sum + length, 0)
  const hems = Object.values(draft.totals.hems).reduce((sum, length) => sum + length, 0)
  const copies = draft.pieces.reduce((sum, piece) => sum + piece.copies.length, 0)
  const fitting = draft.fit.filter(({ status }) => status === 'good').length
  console.log(`${quote.number} for ${client.name}: gored undertunic in ${cloth.name}`)
  console.log(
    `  pieces   ${copies} of ${draft.pieces.length} shapes; fit report ${fitting} of ${draft.fit.length} good`,
  )
  for (const { name, mm } of draft.sizes) console.log(`           ${say(name)}: ${(mm / 10).toFixed(1)} cm`)
  console.log(
    `  lay      ${(lay.length / 1000).toFixed(2)} m on ${(lay.usableWidth / 10).toFixed(1)} cm, ${(lay.used * 100).toFixed(1)} % used`,
  )
  console.log(
    `  cloth    buy ${(purchase.toBuy / 1000).toFixed(2)} m (need ${(purchase.needed / 1000).toFixed(3)} m)`,
  )
  console.log(`  sewing   ${(seams / 1000).toFixed(1)} m of seams, ${(hems / 1000).toFixed(1)} m of hems`)
  for (const { work, metres } of sewing.threads) console.log(`  thread   ${metres.toFixed(0)} m by ${work}`)
  console.log(
    `  hours    ${printMinutes(sewing.total.mean)} expected, four times in five within ${printMinutes(sewing.total.p80)}`,
  )
  for (const { name, how, amount } of price.lines) {
    console.log(
      `  price    ${printMoney(amount, locale).padStart(9)}  ${say(name, reader)} (${say(how, reader)})`,
    )
  }
  console.log(
    `  total    ${printMoney(price.total, locale).padStart(9)}  deposit ${printMoney(price.deposit, locale)}`,
  )
  console.log(`Papers in ${folder}:`)
  await printed('quote.print', { id: quote.id })
  await printed('workOrder.print', { garmentId })
  await printed('cuttingSheet.print', { garmentId })
} finally {
  store.close()
  rmSync(scratch, { recursive: true, force: true })
}
