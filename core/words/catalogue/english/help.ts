/** Help next to the thing: what a word of the trade means and why it matters, and what to mind when a measure is taken. */
export const help = {
  'help.about': 'What is this: {what}',
  'help.close': 'Close',
  'help.source': 'Source: {source}',
  'help.source.iso8559': 'named as in ISO 8559-1:2017; how it is taken is said in our own words.',
  'help.source.workwoman': 'The Workwoman’s Guide, 1838.',
  'help.source.dillmont': 'Thérèse de Dillmont, Encyclopedia of Needlework.',
  'help.draws.measure': 'Where the tape goes: {what}',
  'help.draws.word': 'A scheme: {what}',
  'help.gusset': 'Gusset',
  'help.gusset.what':
    'A square let in where sleeve and body meet under the arm, folded over its diagonal when it is worn.',
  'help.gusset.why':
    'Laid flat it adds its diagonal to the room round the arm, so that the arm can be raised without the garment rising with it.',
  'help.gore': 'Gore',
  'help.gore.what':
    'A long wedge set into a seam or slit, its point at the top, to widen the skirt towards the hem.',
  'help.gore.why':
    'Its slanting edge gives and its straight edge does not: sewn slant to straight, the seam hangs quietly.',
  'help.godet': 'Godet',
  'help.godet.what': 'A short, wide wedge set into a slit at the hem, where a gore would begin much higher.',
  'help.godet.why': 'It gives room for the stride at the very bottom and falls in folds.',
  'help.keyhole': 'Keyhole neck',
  'help.keyhole.what': 'A small round for the neck with a slit down the front.',
  'help.keyhole.why':
    'The round sits close to the neck, and the slit lets the head pass: round and slit together must be more than the head.',
  'help.facing': 'Facing',
  'help.facing.what':
    'A piece of the shape of the edge, sewn to it right side to right side, turned inside and felled down.',
  'help.facing.why':
    'A hollow edge cannot be turned by itself without clipping; the facing ends it and bears the strain.',
  'help.casing': 'Casing',
  'help.casing.what': 'A fold sewn down as a tunnel that a cord or tape runs in.',
  'help.casing.why':
    'The cord draws the width in on the body, and the garment still goes on over head or hips.',
  'help.band': 'Band',
  'help.band.what':
    'A straight strip folded along its middle, with the gathered or pleated edge between its halves.',
  'help.band.why':
    'It holds the fullness at one length for good, and it is what closes: with buttons, hooks or ties.',
  'help.gathers': 'Gathers',
  'help.gathers.what':
    'A longer edge drawn up on two or more running threads until it is as long as the edge it is sewn to.',
  'help.gathers.why':
    'The fullness says how many lengths of cloth go into one. A rule of old takes up three threads of the cloth and misses four.',
  'help.pleats': 'Pleats',
  'help.pleats.what':
    'Folds laid before they are sewn. Seen from above: knife pleats all one way, box pleats by twos away from each other, cartridge pleats as round tubes sewn by their crests.',
  'help.pleats.why':
    'They take up more cloth in less room than gathers, and hang in the same lines at every wearing.',
  'help.lining': 'Lining',
  'help.lining.what': 'The same shapes again in another cloth, felled to the garment along its edges.',
  'help.lining.why':
    'It bears the strain, covers the seams and warms. It has a lay of its own, and shrinks by its own measure: wash both before cutting.',
  'help.piecing': 'Piecing',
  'help.piecing.what': 'A strip joined to a piece that is wider than the cloth, on the straight grain.',
  'help.piecing.why': 'It costs a seam and saves a wider cloth. Garments of old have many.',
  'help.grain': 'Grain and cross',
  'help.grain.what':
    'The grain runs along the selvedge; on the cross means aslant to it, where cloth stretches most.',
  'help.grain.why':
    'A piece hangs by its grain. What is cut on the cross gives, and must hang before its hem is levelled.',
  'help.ease': 'Ease',
  'help.ease.what': 'What a garment is larger than the body, all round.',
  'help.ease.why':
    'Breathing, sitting and raising an arm need room, and so does whatever is worn beneath. Without an opening the garment also has to go on.',
  'help.seams': 'Kinds of seams',
  'help.seams.what':
    'Open: the allowances are pressed apart. Felled: one is folded over the other and sewn down. Overcast: the raw edges are sewn over.',
  'help.seams.why':
    'A felled seam has no raw edge, lies flat and outlasts washing; it costs a second row of stitches. Seams no one sees may be sewn by machine.',
  'help.hems': 'Kinds of hems',
  'help.hems.what':
    'Turned twice, so that the raw edge lies inside; rolled, on fine cloth; faced with a strip, where the edge is much curved.',
  'help.hems.why':
    'A deep hem puckers on a curve. On linen the first turning is narrow, 2 mm at most, and the second as deep again.',
  'help.tucks': 'Growth tucks',
  'help.tucks.what': 'Folds sewn above the hem that take up length.',
  'help.tucks.why':
    'Unpicked, they let the garment down: for a child that grows, or cloth that shrinks in the wash.',
  'help.inlay': 'Inlay',
  'help.inlay.what': 'More cloth left beyond the seam than sewing it needs.',
  'help.inlay.why': 'The seam can be let out later. It shows a little through thin cloth.',
  'help.shrinkage': 'Shrinkage in the wash',
  'help.shrinkage.what':
    'What cloth loses at its first wash, along its length and across, in hundredths. A metre that shrinks by 6 % leaves 94 cm.',
  'help.shrinkage.why':
    'A garment is cut from washed cloth, so more is bought: 1 m washed takes 1.064 m of it. Wash a square of it, measure before and after, and write down what you found.',
  'help.sweep': 'Sweep',
  'help.sweep.what': 'All the way round the hem.',
  'help.sweep.why':
    'It has to be wide enough to walk and climb stairs in. Gores give it without widening the shoulders.',
  'help.measure.stature': 'Other heights are held against it: an error here shows nowhere else.',
  'help.measure.cervicalHeight':
    'Garments that hang from the shoulders end so far above the floor as this says.',
  'help.measure.headGirth': 'A neck without an opening, a hood and a coif must let it pass.',
  'help.measure.neckGirth': 'A standing collar closes on it; two fingers of room are ease, not measure.',
  'help.measure.neckBaseGirth':
    'Every neckline starts from it; a chain laid round the neck shows where it runs.',
  'help.measure.shoulderLength':
    'Feel for the end of the bone while she lifts the arm; it is further out than it looks.',
  'help.measure.shoulderWidth': 'Arms hanging: raised, they draw the shoulders together.',
  'help.measure.backWidth': 'Let her fold her arms once and then let them hang, or it is taken too narrow.',
  'help.measure.chestWidth': 'It goes with the back width: the armhole is what is left between them.',
  'help.measure.bustGirth': 'A tape that drops behind reads too much: look at it from the side.',
  'help.measure.chestGirth':
    'Without a bust it is the widest girth of the trunk, and a tunic is drafted by it; where there is a bust, that is the girth that counts.',
  'help.measure.underbustGirth': 'It decides whether a laced garment bears the bust.',
  'help.measure.bustPointWidth': 'What is worn beneath moves the points: take it over that.',
  'help.measure.neckToBustPoint':
    'It falls with age and with the garment beneath; never take it from a table.',
  'help.measure.waistGirth':
    'Tie a tape round the waist first: every length from the waist then starts at one place.',
  'help.measure.hipGirth': 'Over the belly too, if that stands out further at this level.',
  'help.measure.backWaistLength':
    'The tied tape marks its end; a stooping back makes it longer than the front.',
  'help.measure.frontWaistLength': 'Less the back waist length it says how much shape the bust asks for.',
  'help.measure.waistToHip':
    'It follows the curve, so it is a little more than the difference of the two heights.',
  'help.measure.trunkGirth':
    'One-piece garments bind at the crotch if it is short: give it ease for sitting.',
  'help.measure.totalCrotchLength': 'She holds it where she would wear the waist; sitting takes more.',
  'help.measure.cervicalToWristLength':
    'A bent arm reads several centimetres more than a hanging one: the sleeve needs them.',
  'help.measure.armLength': 'Bent, since a sleeve cut to a hanging arm rides up at every reach.',
  'help.measure.upperArmLength': 'It says where a sleeve must be wide enough for the bent elbow.',
  'help.measure.armscyeGirth': 'It is the arm’s, not the garment’s: an old armhole is deeper.',
  'help.measure.upperArmGirth': 'Take the stronger arm; it is mostly the one she writes with.',
  'help.measure.elbowGirth': 'A tight sleeve must let it bend.',
  'help.measure.forearmGirth': 'A sleeve that is pushed up stops here.',
  'help.measure.wristGirth': 'A band closes on it; what has no opening goes by the hand.',
  'help.measure.handGirth': 'The thumb is left out, so a wrist without an opening needs about 4 cm more.',
  'help.measure.handLength': 'Gloves and mittens go by it.',
  'help.measure.waistHeight': 'With the shoes she will wear it is another measure: write down which.',
  'help.measure.hipHeight': 'It says at which level the garment must be widest.',
  'help.measure.insideLegHeight': 'She holds the end of the tape herself; the stride is reckoned from it.',
  'help.measure.kneeHeight': 'Hose are shaped by it, and hems named by it.',
  'help.measure.thighGirth': 'Both legs, if one is the stronger.',
  'help.measure.kneeGirth': 'Standing; bent it is larger, and close hose must allow for that.',
  'help.measure.calfGirth': 'Half way down is not the fullest: move the tape until it reads most.',
  'help.measure.ankleGirth': 'It is much less than the heel that has to pass: a close ankle needs a slit.',
  'help.measure.heelGirth': 'About half as much again as the ankle.',
  'help.measure.footLength': 'With her weight on it: a foot is longer standing.',
} as const
