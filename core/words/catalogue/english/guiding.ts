/** What leads on: from a figure to where it is set, and from an empty screen to the next act. */
export const guiding = {
  'guiding.rates': 'The price is made of hourly rates that are still starting figures.',
  'guiding.rates.set': 'Set your own',
  'guiding.address': 'Your address is not set, so it will not be on the quote.',
  'guiding.address.quoted': 'Your address was not set when this quote was saved, so it is not on the paper.',
  'guiding.address.set': 'Set it',
  'guiding.address.next': 'Set it for the next ones',
  'guiding.deposit': 'Where the deposit is set',
  'guiding.begun': 'Money in {currency}, lengths in {unit}, prints on {paper}; change it under Workroom.',
  'guiding.alone': 'For you alone',
  'guiding.alone.about': 'What was reckoned with when this quote was saved. None of it is on the paper.',
  'guiding.alone.profit': 'Profit at the price asked',
  'guiding.alone.together': 'Together',
  'guiding.answer': 'What the client says',
  'guiding.printed': 'printed {day}',
  'guiding.look.close': 'Close it',
  'guiding.lay.figures':
    'Figures at the corners are {unit} from the near selvedge / from the cut end; the rule counts {unit} from the cut end.',
  'guiding.new': 'For whoever is new here',
  'guiding.look':
    'Or look round Tenter Lane, with invented clients, cloths and work, in a file of its own. Nothing of yours goes there; “Leave the sample” leads back.',
  'guiding.empty.cloths':
    'No cloth is in the book yet. Enter the first above: its name, its width and the price of a metre will do. Then a garment can be quoted in it.',
  'guiding.empty.quotes':
    'There are no quotes yet. At the quote desk choose for whom, which garment and which cloth; what you save there stands here, to be printed and answered.',
  'guiding.empty.toDesk': 'To the quote desk',
  'guiding.empty.commissions':
    'No work is going on. When a client accepts a quote, it becomes a commission and stands here, with its steps, its papers and its day.',
  'guiding.empty.toQuotes': 'To the quotes',
  'guiding.empty.plan':
    'No work is open. Once a quote is accepted, these weeks show how full they are and what will be done when.',
  'guiding.empty.shopping':
    'Nothing is to be bought for the work that is agreed. What an accepted quote needs, and what is not in the house, stands here by itself.',
  'guiding.empty.toCommissions': 'To the commissions',
  'guiding.find.papers': 'What stands on your papers',
  'guiding.find.papers.also':
    'name address email telephone letterhead terms language region unit centimetres inches paper numbers settings',
  'guiding.find.money': 'Rates: what an hour costs and must earn',
  'guiding.find.money.also':
    'wage pay hourly price margin profit markup tax vat deposit instalment rounding currency money settings',
  'guiding.find.year': 'What the workroom costs in a year',
  'guiding.find.year.also': 'overhead rent insurance yearly settings',
  'guiding.find.threads': 'Thread, needles full and stitches to the centimetre',
  'guiding.find.threads.also': 'reel skein waxed doubled density settings',
  'guiding.find.notions': 'What notions cost',
  'guiding.find.notions.also': 'buttons hooks lace tape price settings',
  'guiding.find.mark': 'The workroom’s mark',
  'guiding.find.mark.also': 'logo emblem picture',
  'guiding.find.people': 'Who works here, and on which days',
  'guiding.find.people.also': 'hours helper working skills',
  'guiding.find.daysOff': 'Days off and holidays',
  'guiding.find.daysOff.also': 'free days vacation leave closed christmas easter absence settings',
  'guiding.find.safekeeping': 'Safekeeping: copies of the book',
  'guiding.find.safekeeping.also': 'backup backups restore save sealed passphrase move folder',
  'guiding.find.takeOut': 'Take out what is kept, or bring it along',
  'guiding.find.takeOut.also': 'export archive csv spreadsheet import',
  'guiding.find.lookRound': 'Look round the sample, print “The first hour”',
  'guiding.find.lookRound.also': 'example demo tour guide tenter lane help',
  'guiding.print':
    'To lie beside the keyboard: the way to a first quote, the places and the keys, on one page.',
} as const
