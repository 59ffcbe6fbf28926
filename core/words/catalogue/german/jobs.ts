import type { jobs as english } from '../english/jobs.ts'
import type { Translated } from '../translated.ts'

/** Work that takes long, while it is done. */
export const jobs: Translated<typeof english> = {
  'jobs.stop': 'Anhalten',
  'jobs.damaged.goOn': 'Mit dem Buch weitermachen',
  'jobs.pattern.print': 'Das Schnittmuster wird gedruckt',
  'jobs.pattern.draw': 'Das Schnittmuster wird gezeichnet',
  'jobs.careSheet.print': 'Das Pflegeblatt wird gedruckt',
  'jobs.labels.print': 'Etiketten werden gedruckt',
  'jobs.lay.best': 'Ein kürzerer Zuschneideplan wird gesucht',
  'jobs.lay.compare': 'Auf andere Stoffe legen',
  'jobs.invoice.print': 'Die Rechnung wird gedruckt',
  'jobs.receipt.print': 'Die Quittung wird gedruckt',
  'jobs.reminder.print': 'Die Mahnung wird gedruckt',
  'jobs.store.move': 'Das Buch wird anderswohin gelegt',
  'jobs.quote.print': 'Das Angebot wird gedruckt',
  'jobs.workOrder.print': 'Das Arbeitsblatt wird gedruckt',
  'jobs.cuttingSheet.print': 'Das Zuschneideblatt wird gedruckt',
  'jobs.measuringSheet.print': 'Das Maßblatt wird gedruckt',
  'jobs.startGuide.print': '„Die erste Stunde“ wird gedruckt',
  'jobs.backup.make': 'Das Buch wird kopiert',
  'jobs.backup.restore': 'Vor dem Zurückgehen wird das Buch kopiert',
  'jobs.backup.seal': 'Eine Kopie wird versiegelt',
  'jobs.backup.unseal': 'Eine versiegelte Kopie wird geöffnet',
  'jobs.backups.forget': 'Vergessene werden aus Kopien genommen',
  'jobs.store.export': 'Die Werkstatt wird mitgenommen',
  'jobs.store.import': 'Eine Werkstatt wird mitgebracht',
}
