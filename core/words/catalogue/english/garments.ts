/** The garments of the wardrobe: their names, when they were worn, and what is said of one that is drafted. */
export const garments = {
  'draft.describe.undertunic': 'A tunic {length} long from the shoulder and {chest} round the chest.',
  'draft.describe.neck.keyhole': 'A keyhole neck with a slit of {slit}, {finish}.',
  'draft.describe.neck.round': 'A round neck, {finish}.',
  'draft.describe.neck.boat': 'A boat neck, {finish}.',
  'draft.describe.neck.square': 'A square neck, {finish}.',
  'draft.describe.faced': 'faced with the same cloth',
  'draft.describe.rolled': 'with a narrow rolled hem',
  'draft.describe.sleeves.tapered':
    'Sleeves {reach} from the middle of the back, tapered to {wrist} at the end, with square gussets under the arms.',
  'draft.describe.sleeves.straight':
    'Straight sleeves {reach} from the middle of the back, with square gussets under the arms.',
  'draft.describe.gores': '{gores} gores, {sweep} round the hem.',
  'draft.describe.drawers':
    'Drawers {length} long from the waist, each leg {leg} round, on a cord at the waist.',
  'draft.describe.kerchief': 'A kerchief {side} square, hemmed narrow all round.',
  'draft.describe.apron': 'An apron {length} long and {width} wide, gathered to a band with ties.',
  'draft.describe.petticoat':
    'A petticoat {length} long of {panels} straight widths, {sweep} round the hem, gathered to a band with ties.',
  'draft.describe.shift': 'A shift {length} long from the shoulder, {sweep} round the hem.',
  'draft.describe.shiftNeck.drawn': 'A wide neck drawn up on a tape.',
  'draft.describe.shiftNeck.hemmed': 'A wide neck with a narrow hem.',
  'draft.describe.sleeveEnd.hemmed':
    'Straight sleeves with gussets, {reach} from the middle of the back, hemmed.',
  'draft.describe.sleeveEnd.banded':
    'Sleeves with gussets, {reach} from the middle of the back, gathered into narrow bands.',
  'draft.describe.smock': 'A smock {length} long from the shoulder, {sweep} round the hem.',
  'draft.describe.smockNeck.high': 'A high neck gathered into a band {band} long, with a slit in front.',
  'draft.describe.smockNeck.low': 'A low neck gathered into a band {band} long, with a slit in front.',
  'draft.describe.smockCuffs':
    'Sleeves gathered into wristbands of {cuff}, with square gussets under the arms.',
  'draft.describe.shirt': 'A shirt {length} long behind and {chest} round.',
  'draft.describe.shirtEnds':
    'Neck gathered into a collar of {collar}, sleeves into wristbands of {cuff}; linings where it strains.',
  'draft.describe.veil.rectangle': 'A veil {length} long and {depth} deep, hemmed narrow all round.',
  'draft.describe.veil.halfCircle': 'A half circle {length} across, hemmed narrow all round.',
  'draft.describe.veil.circle': 'A circle {length} across, hemmed narrow all round.',
  'draft.describe.wimple': 'A wimple {length} long and {depth} deep, hemmed narrow all round.',
  'draft.describe.coif': 'A coif {width} round the head and {depth} deep, gathered at the crown.',
  'draft.describe.lined': 'Lined throughout.',
  'draft.describe.hood': 'A hood with a cape {cape} long and {sweep} round.',
  'draft.describe.hoodFront.closed': 'Closed in front, to go over the head.',
  'draft.describe.hoodFront.buttoned': 'Buttoned in front.',
  'draft.describe.tail': 'A tail {tail} long.',
  'draft.describe.cloak.half': 'A half circle cloak {length} long from the neck, {sweep} round the hem.',
  'draft.describe.cloak.threeQuarter':
    'A cloak of three quarters of a circle, {length} long from the neck, {sweep} round the hem.',
  'draft.describe.cloak.full': 'A full circle cloak {length} long from the neck, {sweep} round the hem.',
  'draft.describe.cloakNeck.pleated': 'Pleated into a band at the neck, so that it meets in front.',
  'draft.describe.cloakNeck.plain': 'Set plain into a band at the neck.',
  'draft.describe.hooded': 'With a hood.',
  'draft.describe.hose': 'A pair of hose cut on the cross, {length} high from the floor.',
  'draft.describe.hoseFoot.footed': 'Footed.',
  'draft.describe.hoseFoot.footless': 'Ending at the ankle.',
  'draft.describe.points': 'Held up by {points} points.',
  'draft.describe.strapDress':
    'A dress {length} long from the armpit, {chest} round the chest and {sweep} round the hem.',
  'draft.describe.straps': 'Two straps sewn on behind, with loops in front for brooches.',
  'draft.describe.sideless': 'An overgown {length} long from the shoulder, {sweep} round the hem.',
  'draft.describe.sides': 'Sides open from the shoulder for {opening}.',
  'draft.describe.kirtle':
    'A kirtle {length} long from the shoulder, {chest} round the chest laced and {sweep} round the hem.',
  'draft.describe.laced.front': 'Laced in front for {opening} with one lace in a spiral.',
  'draft.describe.laced.side': 'Laced at the left side for {opening} with one lace in a spiral.',
  'draft.describe.kirtleSleeve.none': 'Without sleeves.',
  'draft.describe.kirtleSleeve.elbow': 'Sleeves to the elbow.',
  'draft.describe.kirtleSleeve.wrist': 'Tapered sleeves to the wrist.',
  'draft.describe.bodiceLined': 'The bodice lined to the hip.',
  'draft.describe.forearmButtoned': 'Forearms buttoned.',
  'draft.describe.sideSlits': 'Sides slit for {slit} above the hem.',
  'draft.describe.alteration': 'On the garment you bring.',
  'draft.describe.alteration.unpicked': '{length} unpicked.',
  'draft.describe.alteration.seamsResewn': '{length} of seams sewn again.',
  'draft.describe.alteration.hemsResewn': '{length} of hems sewn again.',
  'draft.describe.alteration.patches': 'Patches: {count}.',
  'draft.describe.alteration.darns': 'Darns: {count}.',
  'draft.describe.alteration.buttonsSewn': 'Buttons sewn on: {count}.',
  'draft.describe.alteration.eyeletsWorked': 'Eyelets worked: {count}.',
  'draft.construction.goredUndertunic': 'gored undertunic',
  'draft.construction.drawers': 'linen drawers',
  'draft.construction.kerchief': 'kerchief',
  'draft.construction.apron': 'apron',
  'draft.construction.petticoat': 'gathered petticoat',
  'draft.construction.shift': 'shift',
  'draft.construction.smock': 'smock',
  'draft.construction.shirt': 'shirt',
  'draft.construction.veil': 'veil',
  'draft.construction.wimple': 'wimple',
  'draft.construction.coif': 'coif',
  'draft.construction.hood': 'hood',
  'draft.construction.circleCloak': 'circle cloak',
  'draft.construction.hose': 'hose',
  'draft.construction.strapDress': 'strap dress',
  'draft.construction.sidelessOvergown': 'sideless overgown',
  'draft.construction.lacedKirtle': 'laced kirtle',
  'draft.construction.overtunic': 'overtunic',
  'draft.construction.alteration': 'alteration or mending',
  'draft.period.goredUndertunic': '11th to 14th century and later, much of Europe',
  'draft.period.drawers': '12th to 19th century',
  'draft.period.kerchief': 'most centuries, all of Europe',
  'draft.period.apron': '15th to 19th century',
  'draft.period.petticoat': '16th to 19th century',
  'draft.period.shift': '18th century and early 19th',
  'draft.period.smock': '16th century and early 17th',
  'draft.period.shirt': '18th century and early 19th',
  'draft.period.veil': '10th to 15th century',
  'draft.period.wimple': '12th to 15th century',
  'draft.period.coif': '13th to 17th century',
  'draft.period.hood': '13th to 15th century',
  'draft.period.circleCloak': 'most centuries',
  'draft.period.hose': '12th to 15th century',
  'draft.period.strapDress': '9th to 11th century, the north',
  'draft.period.sidelessOvergown': '14th and 15th century',
  'draft.period.lacedKirtle': '14th and 15th century',
  'draft.period.overtunic': '11th to 14th century and later, much of Europe',
  'draft.period.alteration': 'any',
  'draft.summary.goredUndertunic':
    'Straight panels, tapered sleeves, square underarm gussets and gores from the waist. Worn under gowns, or belted as a dress; outer tunics use the same cut.',
  'draft.summary.drawers':
    'Two wide straight legs, a square set on its corner between them, and a cord through the folded top.',
  'draft.summary.kerchief':
    'A square of fine linen, folded on the cross and tied over the hair or laid about the neck.',
  'draft.summary.apron': 'One straight width gathered to a band with ties.',
  'draft.summary.petticoat':
    'Straight widths gathered to a band that ties, one seam open at the top. Worn under a gown or as the skirt itself.',
  'draft.summary.shift':
    'Body linen in one length over the shoulder, flared by the gores cut off its own sides, with square gussets and a wide neck on a tape.',
  'draft.summary.smock':
    'A straight body with reversed gores and square gussets, neck and sleeves gathered into bands.',
  'draft.summary.shirt':
    'Nineteen straight parts and no waste: a body in one length, gathered sleeves, collar and wristbands, gussets under the arms and beside the neck.',
  'draft.summary.veil': 'A hemmed length, half circle or circle of fine linen or silk, pinned over the hair.',
  'draft.summary.wimple':
    'A length of fine linen under the chin, its ends pinned on the crown beneath a veil.',
  'draft.summary.coif':
    'A close cap of one piece, sewn along the top, gathered at the crown and drawn in at the nape.',
  'draft.summary.hood':
    'Two sides joined over crown and back, a gore over each shoulder; closed or buttoned in front, with or without a long tail.',
  'draft.summary.circleCloak':
    'Half, three quarters or the whole of a circle, joined on the straight grain, pleated or set plain into a neckband; hooded or lined if you like.',
  'draft.summary.hose':
    'Two legs cut on the cross so that they cling, one seam behind each, footed or not, held up by points.',
  'draft.summary.strapDress':
    'A tube from armpit to hem, gored from the waist, hung from two straps that meet loops in front. Worn over a shift.',
  'draft.summary.sidelessOvergown':
    'Front and back on narrow shoulders, the sides open to the hip and gored below. Worn over a kirtle.',
  'draft.summary.lacedKirtle':
    'A close gown of four shaped panels, gored below, laced in front or at the side; it bears the bust by itself. Always with a toile.',
  'draft.summary.overtunic':
    'The undertunic’s cut in wool with room for what is worn beneath; lined or not, forearms buttoned and sides slit if you like.',
  'draft.summary.alteration':
    'Work on a garment that is there already: unpicking, seams and hems sewn again, patches, darns, buttons and eyelets.',
  'draft.extra.tucks': '{count} growth tucks of {depth} above the hem, to be let down.',
  'draft.extra.inlay': 'Side seams with {inlay} more cloth inside, to be let out.',
  'draft.extra.nursing': 'Slits for nursing on both sides.',
  'draft.extra.trim': 'Trim along: {hem}.',
} as const
