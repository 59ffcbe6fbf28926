/** Body dimensions: their names and how each is taken. */
export const measure = {
  'refusal.measure.otherClient': 'A set can only supersede a set of the same client.',
  'refusal.measure.unknown': '“{id}” is not a measure the planner knows. The measures are: {known}.',
  'refusal.measure.range':
    'A {measure} of {given} is on no body: between {least} and {most} is expected. Check the number and its unit.',
  'refusal.measure.contradiction':
    'The {smaller} ({small}) should be less than the {larger} ({large}). Measure both again.',
  'refusal.measure.child': 'The proportions of grown people say nothing of a child. Measure what is missing.',
  'measure.doubt.range': '{measure}: {given} is on no body. Check the number and its unit.',
  'measure.doubt.contradiction':
    'The {measure} ({given}) should be less than the {other}. Measure both again.',
  'measure.doubt.inches':
    '{measure}: {given} looks like inches written as centimetres. {rather} would go with the other measures.',
  'measure.doubt.centimetres':
    '{measure}: {given} looks like centimetres written as inches. {rather} would go with the other measures.',
  'measure.doubt.swapped':
    '{measure} ({given}) and {other} ({rather}) go better with the other measures if they change places.',
  'measure.doubt.digit':
    '{measure}: the other measures lead one to expect {expected} ± {sd}, not {given}. A digit may have slipped: {rather} would go with them.',
  'measure.doubt.unlikely':
    '{measure}: the other measures lead one to expect {expected} ± {sd}, not {given}. Measure it again, or note why it is so.',
  'measure.caveat.navel':
    'The survey took the waist at the navel, lower than here on many people: estimates and doubts are the looser for it.',
  'measure.caveat.bentArm': 'The survey took it on a bent arm, which reads longer than a hanging one.',
  'measure.caveat.flexed':
    'The survey took it with the muscle tensed: an estimate errs to the wide side, and its spread is widened.',
  'measure.caveat.level': 'The survey took it a little lower, between the creases of the armpits.',
  'measure.survey':
    'Held against a survey of soldiers of the US Army (ANSUR II, 2012). Real bodies differ from it: what is marked is to be measured again, not to be changed.',
  'measure.name.stature': 'stature',
  'measure.how.stature': 'Barefoot, heels together, back to a wall: from the crown of the head to the floor.',
  'measure.name.cervicalHeight': 'cervical height',
  'measure.how.cervicalHeight':
    'Bow the head to find the bone that stands out most at the nape, look ahead again, and measure from it straight down to the floor.',
  'measure.name.headGirth': 'head girth',
  'measure.how.headGirth':
    'Round the head above the ears, over the fullest part at the back, over the hair as it is worn.',
  'measure.name.neckGirth': 'neck girth',
  'measure.how.neckGirth': 'Round the neck just below the Adam’s apple, the tape level and not drawn in.',
  'measure.name.neckBaseGirth': 'neck base girth',
  'measure.how.neckBaseGirth':
    'Round the foot of the neck: over the nape bone, both points where neck meets shoulder, and the hollow in front.',
  'measure.name.shoulderLength': 'shoulder length',
  'measure.how.shoulderLength': 'From the point where neck meets shoulder to the end of the shoulder bone.',
  'measure.name.bustGirth': 'bust girth',
  'measure.how.bustGirth':
    'Round the fullest part of the bust, level all round, over what will be worn beneath.',
  'measure.name.chestGirth': 'chest girth',
  'measure.how.chestGirth': 'Round the chest close under the arms, level all round, breathing quietly.',
  'measure.name.waistGirth': 'waist girth',
  'measure.how.waistGirth':
    'Halfway between the lowest rib and the top of the hip bone, level, after breathing out.',
  'measure.name.hipGirth': 'hip girth',
  'measure.how.hipGirth': 'Round the fullest part of the buttocks, level all round, feet together.',
  'measure.name.backWaistLength': 'back waist length',
  'measure.how.backWaistLength':
    'From the nape bone down the middle of the back to the waist, following the body.',
  'measure.name.cervicalToWristLength': 'back neck to wrist length',
  'measure.how.cervicalToWristLength':
    'Arm slightly bent: from the nape bone over the end of the shoulder and the elbow to the wrist bone.',
  'measure.name.armLength': 'arm length',
  'measure.how.armLength':
    'Arm slightly bent: from the end of the shoulder over the elbow to the wrist bone.',
  'measure.name.upperArmLength': 'upper arm length',
  'measure.how.upperArmLength': 'Arm bent: from the end of the shoulder to the point of the elbow.',
  'measure.name.upperArmGirth': 'upper arm girth',
  'measure.how.upperArmGirth':
    'Round the fullest part of the upper arm, the arm hanging; for heavy work with the muscle tensed.',
  'measure.name.elbowGirth': 'elbow girth',
  'measure.how.elbowGirth': 'Arm bent to a right angle: round over the point of the elbow and the crook.',
  'measure.name.forearmGirth': 'forearm girth',
  'measure.how.forearmGirth': 'Round the fullest part of the forearm, below the elbow.',
  'measure.name.wristGirth': 'wrist girth',
  'measure.how.wristGirth': 'Round the wrist over the wrist bone.',
  'measure.name.handGirth': 'hand girth',
  'measure.how.handGirth': 'Flat hand: round the knuckles, without the thumb.',
  'measure.name.waistHeight': 'waist height',
  'measure.how.waistHeight': 'From the waist, at the side, straight down to the floor.',
  'measure.name.hipHeight': 'hip height',
  'measure.how.hipHeight': 'From the level of the fullest buttocks straight down to the floor.',
  'measure.name.insideLegHeight': 'inside leg height',
  'measure.how.insideLegHeight': 'From the crotch straight down to the floor, without shoes.',
  'measure.name.kneeHeight': 'knee height',
  'measure.how.kneeHeight': 'From the middle of the kneecap straight down to the floor.',
  'measure.name.calfGirth': 'calf girth',
  'measure.how.calfGirth': 'Round the fullest part of the calf, the weight on both feet.',
  'measure.name.shoulderWidth': 'shoulder width',
  'measure.how.shoulderWidth':
    'Across the back from the end of one shoulder bone to the end of the other, over the nape bone.',
  'measure.name.backWidth': 'back width',
  'measure.how.backWidth':
    'Arms hanging: across the back between the creases where the arms begin, halfway down the armhole.',
  'measure.name.chestWidth': 'chest width',
  'measure.how.chestWidth':
    'Arms hanging: across the front between the creases where the arms begin, halfway down the armhole.',
  'measure.name.underbustGirth': 'underbust girth',
  'measure.how.underbustGirth': 'Round the ribs close under the bust, level all round, breathing quietly.',
  'measure.name.bustPointWidth': 'bust point width',
  'measure.how.bustPointWidth':
    'From one bust point to the other, straight across, as the garment beneath carries them.',
  'measure.name.neckToBustPoint': 'neck to bust point',
  'measure.how.neckToBustPoint':
    'From the point where neck meets shoulder down to the bust point of the same side.',
  'measure.name.frontWaistLength': 'front waist length',
  'measure.how.frontWaistLength':
    'From the point where neck meets shoulder over the bust point down to the waist.',
  'measure.name.waistToHip': 'waist to hip length',
  'measure.how.waistToHip':
    'At the side, from the waist over the curve of the hip to the level of the fullest buttocks.',
  'measure.name.trunkGirth': 'trunk girth',
  'measure.how.trunkGirth':
    'From the middle of one shoulder down the front, through the crotch and up the back to the same point, not drawn in.',
  'measure.name.totalCrotchLength': 'total crotch length',
  'measure.how.totalCrotchLength':
    'From the waist in front through the crotch to the waist behind, not drawn in. She may hold the tape herself.',
  'measure.name.armscyeGirth': 'armscye girth',
  'measure.how.armscyeGirth':
    'Arm hanging: from the end of the shoulder bone through the armpit and back, the tape easy.',
  'measure.name.handLength': 'hand length',
  'measure.how.handLength':
    'Flat hand, palm up: from the first crease of the wrist to the tip of the middle finger.',
  'measure.name.thighGirth': 'thigh girth',
  'measure.how.thighGirth':
    'Round the thigh just below the crease of the buttock, level, the weight on both feet.',
  'measure.name.kneeGirth': 'knee girth',
  'measure.how.kneeGirth': 'Round the knee over the middle of the kneecap, the leg straight.',
  'measure.name.ankleGirth': 'ankle girth',
  'measure.how.ankleGirth': 'Round the ankle just above the ankle bones, where the leg is thinnest.',
  'measure.name.heelGirth': 'heel girth',
  'measure.how.heelGirth':
    'Foot flat: slantwise from under the heel over the bend of the instep and back. A hose or a boot must pass it.',
  'measure.name.footLength': 'foot length',
  'measure.how.footLength':
    'Standing: from the back of the heel to the tip of the longest toe, along the floor.',
  'measure.also.stature': 'height, body height, how tall',
  'measure.also.cervicalHeight': 'nape to floor, seventh vertebra height',
  'measure.also.headGirth': 'head circumference, hat size, round the head',
  'measure.also.neckGirth': 'collar size, neck circumference, round the neck',
  'measure.also.neckBaseGirth': 'base of neck, neckline, foot of the neck',
  'measure.also.shoulderLength': 'shoulder seam, single shoulder, neck to shoulder',
  'measure.also.shoulderWidth': 'across the shoulders, yoke width, shoulder to shoulder',
  'measure.also.backWidth': 'across the back, cross back',
  'measure.also.chestWidth': 'across the front, cross front, chest across',
  'measure.also.bustGirth': 'bust, bust circumference, round the bust, breast girth',
  'measure.also.chestGirth': 'chest, chest circumference, round the chest, breast',
  'measure.also.underbustGirth': 'under bust, band size, ribcage, stays',
  'measure.also.bustPointWidth': 'bust span, point to point, apex to apex',
  'measure.also.neckToBustPoint': 'bust depth, shoulder to apex',
  'measure.also.waistGirth': 'waist, waist circumference, round the waist, middle',
  'measure.also.hipGirth': 'hips, seat, hip circumference, buttocks, bottom',
  'measure.also.backWaistLength': 'nape to waist, back length, waist length',
  'measure.also.frontWaistLength': 'front length, shoulder to waist, over the bust',
  'measure.also.waistToHip': 'hip depth, side hip',
  'measure.also.trunkGirth': 'torso loop, girth of the trunk, body loop',
  'measure.also.totalCrotchLength': 'rise, crotch seam, front to back rise, saddle',
  'measure.also.cervicalToWristLength': 'nape to wrist, sleeve from the nape, back neck to wrist',
  'measure.also.armLength': 'sleeve length, shoulder to wrist, sleeve',
  'measure.also.upperArmLength': 'shoulder to elbow',
  'measure.also.armscyeGirth': 'armhole, arm hole, scye, round the armhole',
  'measure.also.upperArmGirth': 'biceps, bicep, upper arm, round the arm',
  'measure.also.elbowGirth': 'elbow, round the elbow',
  'measure.also.forearmGirth': 'lower arm, forearm, below the elbow',
  'measure.also.wristGirth': 'wrist, cuff, round the wrist',
  'measure.also.handGirth': 'knuckles, round the hand, fist, hand circumference',
  'measure.also.handLength': 'hand, wrist to fingertip',
  'measure.also.waistHeight': 'waist to floor, outside leg, skirt length',
  'measure.also.hipHeight': 'hip to floor, seat height',
  'measure.also.insideLegHeight': 'inseam, inside leg, crotch to floor',
  'measure.also.kneeHeight': 'knee to floor',
  'measure.also.thighGirth': 'thigh, upper leg, round the thigh',
  'measure.also.kneeGirth': 'knee, round the knee',
  'measure.also.calfGirth': 'calf, lower leg, round the calf',
  'measure.also.ankleGirth': 'ankle, round the ankle',
  'measure.also.heelGirth': 'instep, heel and instep, long heel',
  'measure.also.footLength': 'foot, shoe size, sole',
  'measure.stock.women': 'Stock, women, bust {chest}, {stature} tall',
  'measure.stock.men': 'Stock, men, chest {chest}, {stature} tall',
  'measure.stock.all': 'Stock, bust or chest {chest}, {stature} tall',
  'measure.stock.note':
    'A size for stock: nobody was measured. Figures from a survey, half of whose people of this size are under them.',
  'refusal.measure.stockRange': 'A size must be between {least} and {most}.',
} as const
