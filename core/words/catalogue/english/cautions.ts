/** What can hurt somebody, said the same wherever it is said: on screen, at the cutting table and on every paper. */
export const cautions = {
  'caution.title': 'Take care',
  'caution.localRules': 'Local rules and licensed practice decide.',
  'caution.flame': '{burns} Keep sleeves and hems away from open flame.',
  'caution.burns.and': '{before} {next}',
  'caution.burns.linen': 'Linen burns fast.',
  'caution.burns.cotton': 'Cotton burns fast.',
  'caution.burns.wool': 'Wool is slow to catch fire, but smoulders and burns.',
  'caution.burns.silk': 'Thin silk burns fast.',
  'caution.burns.synthetic': 'Synthetics melt on the skin.',
  'caution.burns.other': 'Cloth of unknown fibre may burn fast or melt on the skin.',
  'draft.caution.pinsInLine':
    'Take every pin out of the line before the blade reaches it, and count the pins when you have done.',
  'draft.caution.points':
    'Awl and unpicker: push away from the hand that holds the cloth, and sheathe the point.',
  'draft.caution.cordEnds': 'Cord ends at the waist: short for a child, and never where they can catch.',
  'draft.caution.pieced':
    'The piece “{piece}” is wider than this cloth, so a strip is joined to it along the straight grain: {seam} of seam more. A little less ease and wider gores may do without.',
  'draft.caution.cordsSmall':
    'For a small child: no cord or tie at hood, neck or head, and none behind; close the neck with a button or a stitched slit (EN 14682).',
  'draft.caution.cordsChild':
    'For a child: no free ends of cords at hood or neck, short ones elsewhere and none hanging below the hem (EN 14682).',
  'draft.caution.dust':
    'Old or unwashed cloth gives off dust: wash it first, air the room, and mind fibre and dye allergies.',
  'draft.caution.iron': 'Never leave a hot iron alone, and test its heat on a scrap of the same cloth.',
  'draft.caution.blades':
    'Shears and rotary cutters: cut away from your hand, and close or guard the blade whenever you put it down.',
  'draft.caution.pins': 'Look for pins before the garment goes over a head.',
  'draft.caution.needles':
    'Count pins and needles before and after; look for them again before the garment is tried on or sent.',
  'draft.caution.armRoutes':
    'The arm measured in two ways differs by {difference}. Ask how the arm was held; the sleeve follows shoulder and arm length.',
  'draft.caution.goreLowered':
    'Armhole and gusset reach below the waist, so the gores start {top} below the shoulder.',
  'draft.caution.hemPuckers': 'A hem {depth} deep will pucker on these gores. Make it narrower or face it.',
  'draft.caution.trailing':
    'A hem so near the floor is dangerous on stairs and near fire. Say so to the wearer.',
  'draft.caution.flame':
    'Linen, cotton and silk burn fast, synthetics melt on the skin: keep sleeves and hems away from open flame.',
  'draft.caution.pinned': 'Pinned cloth: never on a small child, and count the pins in and out.',
  'draft.caution.catches':
    'A long tail catches in doors, wheels and machines, and is no plaything round a child’s neck. Say so to the wearer.',
  'draft.caution.frontGap': 'Set plain, the fronts stand {gap} apart at the shoulders. It will hang open.',
  'draft.caution.cloakTies': 'Ties at a child’s neck can strangle: take a clasp that gives way (EN 14682).',
  'draft.caution.weakClosing':
    'A cloak’s closing should give way when the cloak is caught. Sew it on so that it does.',
  'draft.caution.testStrip':
    'Cut a strip of the cloth on the cross and pull it before you cut: how far it gives and comes back decides how narrow the legs may be.',
  'draft.caution.toileFirst': 'Not to be cut from the good cloth before a toile has been fitted.',
} as const
