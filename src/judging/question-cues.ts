/** Words that name a feeling; a question on feelings is answered outright where one of these stands near (list ours). */
export const feelings: ReadonlySet<string> = new Set(
  `afraid alarmed amazed anger angry anguish annoyed anxious ashamed astonished astonishment bitter bitterly bored brave
   calm careless cheerful comforted confused content contented courage cross curious delight delighted delightful depressed despair
   disappointed disgusted dismay displeased distress distressed doubt dread dreadful eager embarrassed enraged envious envy
   excited fear feared fearful fierce fond fright frightened frighten furious fury glad gladly gladness gloomy grateful gratitude
   greedy grief grieved guilty happily happiness happy hate hated heartbroken homesick hopeful horrified horror hurt impatient
   indignant jealous jealousy jolly joy joyful joyfully joyous keen kind lonely lonesome longing love loved mad marvelled
   melancholy merry miserable misery mourned moved nervous offended overjoyed pained panic patient peaceful perplexed pity
   pleased pleasure proud proudly puzzled rage refreshed regret rejoiced relieved reluctant remorse resentful sad sadly sadness
   satisfied scared scornful shame shocked shy sorrow sorrowful sorrowfully sorry startled stubborn sulky surprise surprised
   suspicious sympathy tearful tempted tender terrible terrified terror thankful thrilled timid tired touched troubled uneasy
   unhappy upset vexed wearied weary wept wished wonder wondered wondering worried worry wrath wretched cried weeping tears
   laughed laughing smiled trembled trembling sighed blushed enjoyed
   admiration admired affection amused awe awed bashful betrayed bewildered bewilderment bothered concern concerned curiosity
   dejected desperate desperation devastated disappointment disgraced disgust dislike disliked dissatisfied excitement flustered
   frustrated furiously glee gleeful hatred helpless hopeless hungry impatience impressed interested intrigued irritated
   loathed lucky moody nervously overwhelmed pitied pitiful pride regretful rejoice rejoicing respect sobbed sobbing shock
   skeptical stunned thirsty triumphant unafraid unwilling wearily`.split(/\s+/),
);

/** Kinds of words that hold an answer, by what is asked; each is a pattern over a sentence in lower case. */
export const cues = {
  cause: /\b(because|since|therefore|thus|cause|caused|reason|account|owing|due|hence|why|result)\b/,
  so: /\b(so|that)\b/,
  because: /\bbecause\b/,
  for: /(^|[,;:"] )(for|as)\b/,
  purpose: /\b(in order|so that|that (he|she|they|it|i|we|you) (might|may|could|should))\b|\bto [a-z]+/,
  future: /\b(will|shall|would|should|if|must|'ll)\b/,
  quote: /["“”]/,
  number:
    /\b(\d+|one|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|hundred|thousand|many|few|several)\b/,
  place:
    /\b(in|into|at|under|upon|near|beside|behind|from|through|over|across|by|within|among) (the|a|an|his|her|their|its|that|this)\b/,
  when: /\b(when|while|as soon as|after|before|until|till|then|once)\b/,
  time: /\b(\d{3,4}|years?|months?|weeks?|days?|hours?|minutes?|seconds?|nights?|mornings?|evenings?|noon|midnight|dawn|sunset|today|yesterday|tomorrow|spring|summer|autumn|fall|winter|january|february|march|april|may|june|july|august|september|october|november|december|monday|tuesday|wednesday|thursday|friday|saturday|sunday|century|ago|later|soon|during|always|never|often)\b/,
  but: /\b(but|however|though|although|yet|instead)\b/,
} as const satisfies Readonly<Record<string, RegExp>>;
export type Cue = keyof typeof cues;
