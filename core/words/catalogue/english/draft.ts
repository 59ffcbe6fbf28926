/** Whether a draft fits: its checks, what would mend them, cautions, and what cannot be drafted. */
export const draft = {
  'refusal.draft.allowance':
    'An allowance of {allowance} is wider than the piece it belongs to. Choose a smaller one.',
  'refusal.draft.unknownConstruction': 'There is no construction “{id}”. There is: {known}.',
  'refusal.draft.unknownChoice': 'This construction has no choice “{id}”. Its choices are: {known}.',
  'refusal.draft.choiceRange': '{choice} of {given} cannot be made: it must be between {least} and {most}.',
  'refusal.draft.choiceValue': '{choice} cannot be “{given}”. Choose one of: {allowed}.',
  'refusal.draft.choiceTwice': '{one} and {other} say the same thing in two ways. Set only one of them.',
  'refusal.draft.missing': 'The {measure} is needed to draft this garment. Take it and enter it.',
  'refusal.draft.slopeInOne':
    'A body cut in one over the shoulder has no shoulder seam to slope. Choose a shoulder seam, or no slope.',
  'refusal.draft.neckTooWide':
    'A neck opening {width} wide leaves no shoulder on a panel {panel} wide. Choose less neck ease.',
  'refusal.draft.shorterThanArmhole':
    'At a length of {length} the tunic would end at its own armholes. Make it at least {least} long, or the armhole or gusset smaller.',
  'refusal.draft.goreAboveGusset':
    'The gores would start {top} below the shoulder, but armhole and gusset reach down to {reach}. Start the gores lower, or make the armhole or gusset smaller.',
  'refusal.draft.noRoomForGores':
    'At a length of {length} there is no room for gores below their top. Make the tunic at least {least} long, or start the gores higher.',
  'refusal.draft.goresTooWide':
    'Gores this wide would be cut nearly across the grain and hang badly. The widest spread is {spread} for each gore, a sweep of {most}; more gores give more.',
  'refusal.draft.goresTooNarrow':
    'The gores would be too narrow to sew. Each needs a spread of at least {spread}, a sweep of {least}, on this body.',
  'refusal.draft.sleeveTooShort':
    'A sleeve {length} long is too short for its gusset. It must be at least {least}; make it longer or the gusset smaller.',
  'refusal.draft.slitTooLong': 'A neck slit of {slit} runs too far down. It may be {most} at most.',
  'refusal.draft.shoulderTooWide':
    'Shoulders {shoulder} wide leave no neck between them. They may be {most} at most.',
  'refusal.draft.sleeveTooNarrow':
    'A sleeve {width} wide does not reach round armhole and wristband. It must be at least {least}.',
  'refusal.draft.capeTooWide':
    'A gore spreading {spread} at the hem would be cut nearly across the grain. It may spread {most} at most; a longer cape allows more.',
  'refusal.draft.neckTooSmall': 'So much of a circle leaves no neck for this body. Take less of one.',
  'refusal.draft.ankleSlit':
    'A slit of {slit} would open more than half of the leg. It may be {most} at most.',
  'refusal.draft.noShoulder':
    'Sides hollowed so deep leave no cloth on the shoulder. Make the hollow or the neck smaller.',
  'refusal.draft.openingTooLong':
    'An opening of {opening} is longer than its seam. It may be {most} at most.',
  'refusal.draft.noTucks': 'This garment has no length that tucks could take up.',
  'refusal.draft.noInlay': 'This garment has no side seams to let out.',
  'refusal.draft.noNursing': 'This garment has no front with room for nursing slits.',
  'refusal.draft.noTrim': 'One of the edges to be trimmed is not on this garment.',
  'draft.fit.thigh': 'Thigh',
  'draft.fit.seatDepth': 'Seat depth',
  'draft.fit.ties': 'Long enough to tie',
  'draft.fit.goesOn': 'Goes on over the hips',
  'draft.fit.chest': 'Chest',
  'draft.fit.waist': 'Waist',
  'draft.fit.hip': 'Hip',
  'draft.fit.seat': 'Sitting',
  'draft.fit.biceps': 'Upper arm',
  'draft.fit.elbow': 'Bent elbow',
  'draft.fit.forearm': 'Forearm',
  'draft.fit.hand': 'Hand through the wrist',
  'draft.fit.head': 'Head through the neck',
  'draft.fit.neckStays': 'Neck stays on the shoulders',
  'draft.fit.stride': 'Stride',
  'draft.fit.floor': 'Hem clear of the floor',
  'draft.fit.cuffCloses': 'Wristband closes',
  'draft.fit.collarCloses': 'Neckband closes',
  'draft.fit.covers': 'Reaches over the head',
  'draft.fit.reaches': 'Reaches round face and crown',
  'draft.fit.around': 'Round the head',
  'draft.fit.depth': 'Deep enough',
  'draft.fit.shoulders': 'Cape over the shoulders',
  'draft.fit.face': 'Room for the face',
  'draft.fit.cloakShoulders': 'Meets in front over the shoulders',
  'draft.fit.hoodAround': 'Hood round the head',
  'draft.fit.knee': 'Knee',
  'draft.fit.calf': 'Calf',
  'draft.fit.heel': 'Heel through the ankle',
  'draft.fit.instep': 'Heel and instep',
  'draft.fit.ball': 'Ball of the foot',
  'draft.fit.goesOver': 'Goes on over the shoulders',
  'draft.fit.strap': 'Straps over the shoulders',
  'draft.fit.supports': 'Close enough to bear the bust',
  'draft.mend.hipEase': 'Give more ease at the hip.',
  'draft.mend.rise': 'Give more rise or a larger gusset.',
  'draft.mend.drawersLength': 'Choose shorter legs.',
  'draft.mend.side': 'Make the square larger.',
  'draft.mend.tieLength': 'Make the ties longer.',
  'draft.mend.skirtLength': 'Shorten it.',
  'draft.mend.opening': 'Make the opening longer.',
  'draft.mend.fullness': 'Give more fullness.',
  'draft.mend.chestEase': 'Give more ease at the chest.',
  'draft.mend.armholeEase': 'Give the armhole more ease.',
  'draft.mend.armholeOrWrist': 'Give the armhole more ease or the wrist more width.',
  'draft.mend.wristWidth': 'Make the wrist wider, or do not taper the sleeve.',
  'draft.mend.slitLength': 'Lengthen the neck slit or give the neck more ease.',
  'draft.mend.neckEase': 'Give the neck less ease.',
  'draft.mend.sweep': 'Give more sweep: wider gores or more of them.',
  'draft.mend.length': 'Shorten the tunic.',
  'draft.mend.neckWidth': 'Change the width of the neck.',
  'draft.mend.goreWidth': 'Make the gores wider.',
  'draft.mend.cuffOpening': 'Make the opening at the wrist longer.',
  'draft.mend.sideSlit': 'Open the sides higher or give more ease.',
  'draft.mend.armholeDepth': 'Make the armhole deeper.',
  'draft.mend.cuffLength': 'Make the wristbands longer.',
  'draft.mend.collarLength': 'Make the collar longer.',
  'draft.mend.backLength': 'Shorten it.',
  'draft.mend.veilLength': 'Make the veil longer.',
  'draft.mend.wimpleLength': 'Make the wimple longer.',
  'draft.mend.coifWidth': 'Make the coif wider.',
  'draft.mend.coifDepth': 'Make the coif deeper.',
  'draft.mend.hoodWidth': 'Make the hood deeper from face to back.',
  'draft.mend.capeSpread': 'Make the shoulder gores wider.',
  'draft.mend.faceOpening': 'Make the opening for the face larger.',
  'draft.mend.neckFit': 'Pleat the neck, or take more of a circle.',
  'draft.mend.cloakLength': 'Make the cloak shorter.',
  'draft.mend.takenIn': 'Take less off round, or a cloth that gives more.',
  'draft.mend.ankleSlit': 'Make the slit at the ankle longer.',
  'draft.mend.goreSpread': 'Make the gores wider.',
  'draft.mend.strapLength': 'Make the straps longer.',
  'draft.mend.dressLength': 'Make the dress shorter.',
  'draft.mend.neckDepth': 'Change the depth of the neck.',
  'draft.mend.bustEase': 'Change the ease at the bust.',
  'draft.mend.openingLength': 'Make the opening longer, or give more ease at the hip.',
  'draft.mend.armEase': 'Give more ease at the upper arm.',
  'draft.caution.cordEnds':
    'Cord ends at the waist: short for a child, and never where they can catch. Local rules and licensed practice decide.',
  'draft.caution.pieced':
    'The piece “{piece}” is wider than this cloth, so a strip is joined to it along the straight grain: {seam} of seam more. A little less ease and wider gores may do without.',
  'draft.caution.cordsSmall':
    'For a small child: no cord or tie at hood, neck or head, and none behind; close the neck with a button or a stitched slit. EN 14682 and local rules decide.',
  'draft.caution.cordsChild':
    'For a child: no free ends of cords at hood or neck, short ones elsewhere and none hanging below the hem. EN 14682 and local rules decide.',
  'draft.caution.dust':
    'Old or unwashed cloth gives off dust; air the room, and mind fibre and dye allergies.',
  'draft.caution.iron': 'Try the iron on a scrap first, and never leave it hot and alone.',
  'draft.caution.blades': 'Keep fingers behind the blade and close or guard it when you put it down.',
  'draft.caution.pins': 'Look for pins before the garment goes over a head.',
  'draft.caution.needles': 'Count needles and pins in and out before the garment leaves.',
  'draft.caution.armRoutes':
    'The arm measured in two ways differs by {difference}. Ask how the arm was held; the sleeve follows shoulder and arm length.',
  'draft.caution.goreLowered':
    'Armhole and gusset reach below the waist, so the gores start {top} below the shoulder.',
  'draft.caution.hemPuckers': 'A hem {depth} deep will pucker on these gores. Make it narrower or face it.',
  'draft.caution.trailing':
    'A hem so near the floor is dangerous on stairs and near fire. Say so to the wearer.',
  'draft.caution.flame':
    'Linen, cotton and silk burn fast, synthetics melt on the skin: keep sleeves and hems away from open flame. Local rules and licensed practice decide.',
  'draft.caution.pinned': 'Pinned cloth: never on a small child, and count the pins in and out.',
  'draft.caution.catches':
    'A long tail catches in doors, wheels and machines, and is no plaything round a child’s neck. Say so to the wearer.',
  'draft.caution.frontGap': 'Set plain, the fronts stand {gap} apart at the shoulders. It will hang open.',
  'draft.caution.cloakTies':
    'Ties at a child’s neck can strangle: take a clasp that gives way. EN 14682 and local rules decide.',
  'draft.caution.weakClosing':
    'A cloak’s closing should give way when the cloak is caught. Sew it on so that it does.',
  'draft.caution.testStrip':
    'Cut a strip of the cloth on the cross and pull it before you cut: how far it gives and comes back decides how narrow the legs may be.',
  'draft.caution.toileFirst': 'Not to be cut from the good cloth before a toile has been fitted.',
} as const
