/** The store, requests and shells. */
export const house = {
  'refusal.workroom.notNew':
    'The sample workroom goes into a new store only, so that it is never mixed with real work. Open a new file for it.',
  'refusal.request.unknown': 'There is no request “{name}”. The list of requests is printed by --list.',
  'refusal.request.unknownField': 'There is no field here called {fields}.',
  'refusal.request.type': 'The field {field} is missing or of the wrong kind: {expected} is expected.',
  'refusal.request.value': 'The field {field} must be one of: {values}.',
  'refusal.request.kind': 'The field {field} is of a kind that cannot be used here.',
  'refusal.request.invalid': 'The field {field} cannot be used as it is: {detail}.',
  'refusal.request.noBody': 'Give the measures of a body, or the id of a measurement set.',
  'refusal.request.noCloth': 'Give a cloth, or the id of one that is stored.',
  'refusal.request.unreadable':
    'This line is not a request. Write one JSON object a line: request and payload.',
  'ask.usage': 'Usage: ask --store FILE, with one request a line on standard input; or ask --list.',
  'ask.oldNode':
    'This needs Node 22.18 or newer; here it is {version}. Run it by npm, which brings its own on Linux x64.',
  'refusal.store.noFolder':
    'There is no folder {folder}. Make it first, or choose another place for the store.',
  'refusal.store.notAStore': '{path} is a folder and not a store. Choose a file.',
  'refusal.store.busy': 'Another window or program has the store {path} open. Close it there first.',
  'refusal.store.damaged':
    '{path} is damaged, or not a store of this planner. It has not been touched. Open a backup instead.',
  'refusal.store.newer':
    'This store was written by a newer version of the planner. Update the planner to open it; nothing has been changed.',
  'refusal.store.notFound': 'There is no {kind} with the id {id}.',
  'refusal.store.stale':
    'This was changed somewhere else in the meantime. Look at it again before you change it.',
  'refusal.store.setUsed':
    'The measures of {day} stand behind a quote and are kept as they are. Take a new set that supersedes them.',
  'refusal.store.attachmentMissing': 'The file {path} is missing. Bring it back from a backup.',
  'refusal.store.attachmentAltered':
    'The file {path} is no longer as it was put there. Bring it back from a backup.',
  'refusal.client.otherName': 'To be sure, type the name as it stands in the book: {name}.',
  'store.kind.client': 'client',
  'store.kind.measurementSet': 'measurement set',
  'store.kind.cloth': 'cloth',
  'store.kind.quote': 'quote',
  'store.kind.commission': 'commission',
  'store.kind.garment': 'garment',
  'store.kind.ownConstruction': 'construction of your own',
  'store.kind.step': 'step',
  'store.kind.document': 'document',
  'store.kind.remnant': 'remnant',
  'store.kind.timeEntry': 'logged time',
  'store.kind.person': 'person at work here',
  'store.kind.absence': 'time off',
  'store.kind.note': 'note',
  'store.kind.picture': 'picture',
  'store.kind.fitting': 'fitting',
  'store.kind.stockLength': 'length of cloth',
  'store.kind.payment': 'payment',
  'store.kind.invoice': 'invoice',
  'refusal.shell.notOpen': 'No workroom is open. Open one first.',
  'refusal.shell.gone': 'The planner has closed its store. Start it again; what it acknowledged is safe.',
  'refusal.shell.stopped': 'Stopped, as you asked. Nothing was kept of it.',
  'refusal.shell.fault':
    'Something went wrong inside the planner. Nothing of this step was kept; what was there before is safe. Try again, and tell its makers if it comes back.',
  'refusal.shell.noViewer':
    'There is no program here that shows PDF files. The paper is kept in the attachments folder.',
  'shell.cannotOpen': 'The workroom cannot be opened',
} as const
