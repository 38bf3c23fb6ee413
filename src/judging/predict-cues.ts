/** A way in which pupils say something of a prediction; `yes` matches, `no` must not. */
export interface PredictCue {
  readonly name: 'forward' | 'reason' | 'own reason' | 'points at text' | 'vague' | 'negated' | 'guess';
  readonly pattern: RegExp;
  readonly yes: string;
  readonly no: string;
}

/** Cues of a prediction, on the text in lower case with straight apostrophes (tuned on the open half of fixtures/sets/predictions). */
export const predictCues: readonly PredictCue[] = [
  {
    name: 'forward',
    pattern:
      /\b(will|won'?t|wont|'ll|gonna|going to|goin to|might|may|could|would|next|later|soon|tomorr?ow|after (?:this|that)|in the end|at the end|turns? out|has to be|have to|is about to|probably|probly|maybe|perhaps|predict|expect)\b/,
    yes: 'the goose will be back',
    no: 'the goose stood still',
  },
  {
    name: 'guess',
    pattern: /\b(i (?:think|guess|bet|reckon|predict|expect|hope)|maybe|perhaps|probably|probly)\b/,
    yes: 'i bet it comes back',
    no: 'he bet on a horse',
  },
  {
    name: 'reason',
    pattern:
      /\b(because|becaus|becuase|becouse|becuz|becus|bc|cuz|cos|coz|since|as (?:the|they|it|he|she|i)|so that|that'?s why|for the reason|due to)\b/,
    yes: 'because the water is rising',
    no: 'the water is rising',
  },
  {
    name: 'own reason',
    pattern:
      /\b(?:because|becaus|becuase|becouse|becuz|becus|bc|cuz|cos|coz|since|as)\s+(?:i|my|we|why not|(?:that|it) would be|there (?:are|is) always|(?!this|his|its|was|is|thats)[a-z]+s (?:are|like|live|have|always|never|love|hate)|[a-z]+ing is)\b|\bours (?:is|are)\b/,
    yes: 'because i saw that in a film',
    no: 'because she was wondering',
  },
  {
    name: 'points at text',
    pattern:
      /\b(it (?:says?|said|talked|told|started|was at)|(?:the|this) (?:text|story|author|writer|part) (?:says?|said|tells?|told)|remember|already|so far|like (?:\w+ ){1,2}said|thing (?:\w+ )?said|now (?:the|they|it|he|she)|sounds? like|looks? (?:like|guilty|sad|angry|scared))\b/,
    yes: 'it said some comes from the sea',
    no: 'he said hello',
  },
  {
    name: 'vague',
    pattern:
      /\b(something|somthing|some thing|stuff|things?) (?:\w+ )?(?:is|will|are|happens?|going|bad|good|strange|exciting)|\b(?:get|gets|be|is) (?:\w+ )?(?:interesting|exciting|better|boring|good)\b|\bmore (?:facts|stuff|things|information)\b|\b(?:not )?end (?:well|badly)\b|\bnothing happens\b|\blearn more\b|\bi (?:don'?t|dont) know\b|\bidk\b/,
    yes: 'something strange is going to happen',
    no: 'the goose will hiss',
  },
  {
    name: 'negated',
    pattern:
      /\b(not|no|never|nobody|none|nothing|without|won'?t|can'?t|cannot|couldn'?t|wouldn'?t|don'?t|doesn'?t|didn'?t|isn'?t|aren'?t|wasn'?t|weren'?t|shouldn'?t|no ?one|neither|nor|stop)\b/,
    yes: 'they wont get across',
    no: 'they get across',
  },
];

/** Where each cue is found first, by name. */
export function cuesIn(plain: string): ReadonlyMap<PredictCue['name'], readonly [number, number]> {
  const found = new Map<PredictCue['name'], readonly [number, number]>();
  for (const { name, pattern } of predictCues) {
    const match = pattern.exec(plain);
    if (match) found.set(name, [match.index, match.index + match[0].length]);
  }
  return found;
}
