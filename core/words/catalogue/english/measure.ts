/** Body dimensions: their names and how each is taken. */
export const measure = {
  'refusal.measure.otherClient': 'A set can only supersede a set of the same client.',
  'refusal.measure.unknown': '“{id}” is not a measure the planner knows. The measures are: {known}.',
  'refusal.measure.range':
    'A {measure} of {given} is on no body: between {least} and {most} is expected. Check the number and its unit.',
  'refusal.measure.contradiction':
    'The {smaller} ({small}) should be less than the {larger} ({large}). Measure both again.',
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
} as const
