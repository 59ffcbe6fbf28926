/** What the planner's own window says outside its page: menus, boxes, dialogs. */
export const shell = {
  'shell.menu.file': 'File',
  'shell.menu.edit': 'Edit',
  'shell.menu.go': 'Go to',
  'shell.menu.view': 'View',
  'shell.menu.window': 'Window',
  'shell.menu.help': 'Help',
  'shell.menu.newQuote': 'New quote',
  'shell.menu.savePaper': 'Save a copy of the paper shown last …',
  'shell.menu.bigger': 'Larger',
  'shell.menu.smaller': 'Smaller',
  'shell.menu.usualSize': 'Usual size',
  'shell.menu.licences': 'Licences of what is built in',
  'shell.menu.log': 'Show the list of faults',
  'shell.fault.title': 'Something went wrong in the planner',
  'shell.fault.said':
    'What was kept before is safe. Go on; if anything looks odd, close the planner and start it again. Which fault it was, without anything of your clients, stands in {file}.',
  'shell.page.title': 'The page broke down',
  'shell.page.again':
    'The page of the planner broke down and was opened again. What was kept is there; what you were typing may be gone.',
  'shell.page.gone':
    'The page of the planner broke down several times and is closed now. What was kept is safe. Start the planner again; if it comes back, tell its makers and send them {file}, which holds nothing of your clients.',
  'shell.page.stuck': 'The page of the planner does not answer just now.',
  'shell.page.wait': 'Wait',
  'shell.page.reopen': 'Open it again',
  'shell.gone.away':
    'The planner is not running any more. Start it again; what you kept is safe. What you just typed is not kept yet: leave this page open, and copy it from here if the planner opens in another window.',
  'shell.gone.other':
    'The planner was started anew, and this page is not known to it. Use the window that it opened. What you just typed here is not kept; copy it from this page.',
  'shell.gone.again': 'Try again',
  'shell.folder.said':
    'The planner cannot make the folder where it keeps its files. Look whether the disk is full or may not be written to, and start it again.',
  'shell.save.title': 'Save a copy',
  'refusal.shell.notSaved':
    'The copy could not be saved there. Look whether there is room and whether you may write to that folder, or take another one.',
} as const
