/** What the disk may do to the book, and what is left then. */
export const faults = {
  'refusal.store.missing':
    'The book {path} is not where it was, though there are copies of it. Nothing new was begun in its place. Go back to a copy.',
  'refusal.store.moved':
    'The book is no longer at {path}: it was moved, renamed or deleted while the planner had it open. This was not kept. Everything before it was saved as a copy in the folder “backups”. Close the planner, put the book back or go back to that copy, and open it again.',
  'refusal.store.movedAway':
    'The book is no longer at {path}, and no copy can be written there: is the disk still connected? This was not kept. Connect it again, then close the planner and open it again.',
  'refusal.store.lookOnly':
    'The book is damaged, and what could be saved of it is here to look at only. Choose first what to go on with.',
  'refusal.disk.full':
    'The disk is full, so this was not kept; the book is as it was before. Make room on the disk, then do it again.',
  'refusal.disk.readOnly':
    'The planner may not write in the folder of the book, so nothing was changed. Allow it to, or put the book into a folder of your own.',
  'refusal.disk.failed':
    'The disk did not do what it was asked, so this was not kept. Do not go on working on this disk: copy the folder of the book to another one, and open it there.',
  'refusal.disk.damaged':
    'A part of the book can no longer be read, so this could not be done. Close the planner and open it again: it will show what can be saved.',
  'refusal.damaged.nothing': 'The book is not damaged. There is nothing to mend.',
  'refusal.damaged.noBackup': 'There is no sound copy to go back to. Go on with what was saved.',
  'refusal.damaged.nothingSaved': 'Nothing of the book could be saved. Go back to a copy.',
  'damaged.title': 'The book is damaged',
  'damaged.missing.title': 'The book is missing',
  'damaged.about':
    'A part of the file {path} can no longer be read. A failing disk, a power cut or another program may have done it. The planner has not written to it and will not: whatever you choose below, it is kept beside the book until you delete it yourself.',
  'damaged.missing.about':
    'There is no book at {path} any more, though there are copies of it. Perhaps it was moved or deleted: if you find it, close the planner, put it back, and open the planner again.',
  'damaged.copyFirst':
    'If the disk makes odd noises, or this is not the first time: close the planner and copy the whole folder to another disk before you choose.',
  'damaged.saved.title': 'What could be saved',
  'damaged.saved.all': 'All {saved} entries could be read.',
  'damaged.saved.some': '{saved} entries are saved, {lost} are lost.',
  'damaged.saved.perhaps': '{saved} entries are saved. How many are lost cannot be counted.',
  'damaged.saved.nothing': 'Nothing of it could be read.',
  'damaged.saved.fromBackup':
    'Entries that could not be read and were taken as the newest copy has them: {fromBackup}.',
  'damaged.saved.standIns':
    'Lost clients or sets of measures that other entries need: {standIns}. One without a name or without measures stands in for each; fill them in from what you have on paper.',
  'damaged.saved.apart':
    'Entries that could be read but do not fit in without what is lost: {apart}. They are kept word for word in the file {path}.',
  'damaged.saved.numbers':
    'Before you write the next quote, invoice or receipt, compare its number with the last one on paper: a number that was lost may be given again.',
  'damaged.parts': 'What could be saved, part by part',
  'damaged.column.part': 'In the book',
  'damaged.column.saved': 'Saved',
  'damaged.column.lost': 'Lost',
  'damaged.lost.unknown': 'not known',
  'damaged.part.clients': 'clients',
  'damaged.part.measures': 'measures',
  'damaged.part.quotes': 'quotes',
  'damaged.part.commissions': 'commissions and their steps',
  'damaged.part.money': 'payments and invoices',
  'damaged.part.times': 'times logged',
  'damaged.part.fittings': 'fittings, notes and pictures',
  'damaged.part.cloths': 'cloths, lengths and remnants',
  'damaged.part.own': 'garments of your own',
  'damaged.part.papers': 'papers printed',
  'damaged.part.settings': 'settings, people and numbers',
  'damaged.part.history': 'history',
  'damaged.backup.title': 'The newest sound copy',
  'damaged.backup.when': 'Made on {day} at {time}. What was done after that is not in it.',
  'damaged.backup.none': 'There is no sound copy in the folder “backups”.',
  'damaged.backup.against': 'The copy held against what could be saved',
  'damaged.column.what': 'In the book',
  'damaged.column.here': 'Saved',
  'damaged.column.there': 'In the copy',
  'damaged.column.onlyHere': 'Only saved',
  'damaged.column.onlyThere': 'Only in the copy',
  'damaged.look': 'Look at what was saved',
  'damaged.looking': 'What could be saved of the damaged book, to look at only.',
  'damaged.back': 'Back to the choice',
  'damaged.goOn.saved': 'Go on with what was saved',
  'damaged.goOn.backup': 'Go back to this copy',
} as const
