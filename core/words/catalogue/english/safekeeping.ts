/** Backups, and going back to one. */
export const safekeeping = {
  'safe.title': 'Safekeeping',
  'safe.about':
    'A checked copy of the book is made when the planner is opened and every hour it is open, and kept for every hour of a day, every day of a month, and every month for ever. The copies lie in the folder “backups” beside the book: copy that folder and “attachments” to another disk now and then.',
  'safe.make': 'Make a copy now',
  'safe.made': 'A copy was made and checked.',
  'safe.none':
    'There is no copy yet: the first is made within an hour of beginning, or now, with this button.',
  'safe.when': '{day}, {time}',
  'safe.size': '{size} MB',
  'safe.why.start': 'when it was opened',
  'safe.why.hourly': 'of the hour',
  'safe.why.asked': 'asked for',
  'safe.why.before-restore': 'before going back to another',
  'safe.why.before-update': 'before an update',
  'safe.why.moved': 'when the book was gone from its place',
  'safe.why.before-moving': 'before it was put somewhere else',
  'safe.why.unsealed': 'from a sealed copy',
  'safe.look': 'Go back to it',
  'safe.look.of': 'Go back to the copy of {when}',
  'safe.preview': 'What going back would change',
  'safe.column.what': 'In the book',
  'safe.column.here': 'Now',
  'safe.column.there': 'In the copy',
  'safe.column.lost': 'Would be gone',
  'safe.column.back': 'Would come back',
  'safe.what.client': 'clients',
  'safe.what.measurement_set': 'sets of measures',
  'safe.what.quote': 'quotes',
  'safe.what.commission': 'commissions',
  'safe.what.payment': 'payments',
  'safe.what.time_entry': 'times logged',
  'safe.sure':
    'The book as it is now is copied first, so that this can be undone in the same way. Whoever was forgotten stays forgotten.',
  'safe.restore': 'Go back to this copy',
  'refusal.backup.none': 'There is no such copy any more. Look at the list again.',
  'refusal.backup.damaged': 'The copy {name} is damaged and cannot be used. Take another one.',
  'safe.seal': 'Seal a copy to take away',
  'safe.seal.about':
    'One file with the book, papers and pictures that only your passphrase opens. Nobody can open it without: write the passphrase down and keep it elsewhere.',
  'safe.seal.passphrase': 'Passphrase',
  'safe.seal.again': 'The passphrase once more',
  'safe.seal.keep': 'Seal it',
  'safe.seal.done': 'The sealed copy lies at {path}.',
  'safe.seal.differ': 'The two are not the same. Type the passphrase again.',
  'refusal.seal.missing': 'There is no file at {path}.',
  'refusal.seal.short':
    'Take a passphrase of at least {shortest} characters: three or four words that you will know in ten years.',
  'refusal.seal.other': 'That is no sealed copy of a book.',
  'refusal.seal.passphrase': 'The passphrase does not open it. Mind capitals and spaces.',
  'refusal.seal.damaged': 'The sealed copy is damaged or cut short. Take another one.',
  'refusal.seal.folder': 'There is something in {folder} already. Choose an empty folder.',
  'refusal.seal.notSent': 'There is no sealed copy here. Choose the file first.',
  'safe.unseal': 'Open a sealed copy',
  'safe.unseal.about':
    'Choose the sealed file. What is in it comes among the copies below, with its papers and pictures; then you can go back to it.',
  'safe.unseal.file': 'Choose the file',
  'safe.unseal.chosen': 'Chosen: {name}',
  'safe.unseal.keep': 'Open it',
  'safe.unseal.done': 'The sealed copy is opened. It is in the list below.',
  'safe.unseal.none': 'Choose a file first.',
  'safe.percent': '{percent} %',
  'safe.move': 'Put the book somewhere else',
  'safe.move.about':
    'The book lies in {folder}. It can be put into another folder or on another disk, with its papers, pictures and copies. All of it is checked there; then the planner goes on from there. What was here stays as a copy.',
  'safe.move.folder': 'The folder to put it in',
  'safe.move.keep': 'Put it there',
  'safe.move.done': 'The book lies in {folder} now.',
  'safe.place.inside': 'Folders in it',
  'safe.place.into': 'go into one of {count}',
  'safe.place.intoNone': 'there are none',
  'safe.place.above': 'One folder up',
  'safe.place.room': '{free} MB can be written here.',
  'safe.place.shut': 'Nothing can be written here. Choose another folder.',
  'safe.care.network':
    'This folder lies on a network. When the network fails in the middle of writing, a book can be damaged, and two machines might write at once. A disk of your own machine is safer; copy sealed copies to the network instead.',
  'safe.care.copied':
    'The name of this folder looks as if a program copied it to other machines. Such a program may take half a book, bring an old one back, or show your clients to others. Another folder is safer; put sealed copies here instead.',
  'refusal.place.noRoom':
    'There is no room for it in {folder}: {needed} MB are needed, and {free} MB can be used. Make room there, or choose another folder. Nothing was changed.',
  'refusal.place.noPath': 'Give the whole path of a folder, from the top of the disk.',
  'refusal.place.noFolder': 'There is no folder {folder}. Make it first, or choose another.',
  'refusal.place.shut': 'The folder {folder} may not be looked into. Choose another.',
  'refusal.place.unwritable':
    'Nothing can be written in {folder}. Choose another folder. Nothing was changed.',
  'refusal.place.same': 'It lies in this folder already. Choose another to put it in.',
  'refusal.place.taken':
    'There is a book in {folder} already. Choose another folder, or put that one away first. Nothing was changed.',
  'refusal.place.notWhole':
    'The copy {file} is not the same as what was copied. The disk may be failing: choose another. Nothing was changed.',
  'refusal.place.gone':
    'The book was put in {folder}, and it is not there now. Plug in the disk, or connect to the place where it lies, and open the planner again. If it will never come back, remove the file {pointer}, and the planner begins with what was left here: its copies are in the folder “backups”.',
  'refusal.place.unreadable':
    'The file {pointer}, which says where the book lies, cannot be read. Write the whole path of its folder into it, or remove it if the book lies beside it.',
  'refusal.store.left':
    'The book is being put into {folder} just now. This was not kept: do it again when that is done.',
  'safe.forgotten': 'People still in it whom you have forgotten since: {count}',
  'safe.forget': 'Take forgotten people out of the copies too',
  'safe.forget.about':
    'Copies made before still hold whoever was forgotten since. They stay forgotten when you go back to such a copy. They can also be taken out of the copies themselves; sealed copies and files you took elsewhere you must look after yourself.',
  'safe.forget.done': 'Copies from which forgotten people were taken: {count}.',
} as const
