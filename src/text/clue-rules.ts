import type { ClueKind } from '../../shared/text.js';

/** A rule that finds the help with a word by a signal. In `pattern` the word stands as `W`; the help is the group `clue`. */
export interface ClueRule {
  readonly name: string;
  /** `form`: told by the form of what is found: a list is an example, a word or two a synonym, more a definition. */
  readonly kind: ClueKind | 'form';
  readonly pattern: RegExp;
  /** A sentence that it finds help in, the word between braces, with the help. */
  readonly example: readonly [string, string];
  /** A sentence in which it must find none. */
  readonly not: string;
}

/** The mark that stands for the word; no text holds it. */
export const wordMark = '\u0001';

const pieces: Readonly<Record<string, string>> = {
  W: wordMark,
  /** Where a sentence begins. */
  BEGIN: '(?<=^|[.!?]["”’\']?\\s+)',
  /** To the end of the sentence. */
  REST: '(?<clue>[^.;!?]+)',
  /** To the next comma. */
  PART: '(?<clue>[^,.;!?—–]+)',
  /** At most five words within the clause; at most eight. */
  NEAR: '(?: [^\\s,.;!?]+){0,5}',
  LATER: '(?:[^\\s.;!?]+ ){0,8}?',
  /** Anything within the sentence, within the clause. */
  SOME: '[^.!?]*?',
  IN: '[^,.;!?]*?',
  KIND: '(?:an?|any|all|one|some|someone|somebody|something|people|animals|plants|tools|things|the|when|where|how)',
};

/** Builds a pattern from its pieces, written in capitals. */
function pattern(source: string): RegExp {
  return new RegExp(
    source.replace(/BEGIN|NEAR|LATER|KIND|REST|PART|SOME|IN|W/g, (name) => pieces[name] ?? name),
    'diu',
  );
}

function rule(
  kind: ClueRule['kind'],
  name: string,
  source: string,
  example: readonly [string, string],
  not: string,
): ClueRule {
  return { name, kind, pattern: pattern(source), example, not };
}

/** Signals that announce what a word is or what else it is called; they hold for any word. */
export const announcing: readonly ClueRule[] = [
  rule(
    'definition',
    'which is',
    'W(?: \\w+)?,? (?:which|who) (?:is|are|was|were) (?<clue>KIND\\b[^.;!?]+)',
    ['A {sledge}, which is a cart on runners, stood there.', 'a cart on runners, stood there'],
    'The {sledge} stood in a shed, which was a mess.',
  ),
  rule(
    'definition',
    'which means',
    '["“]?W["”]?,? (?:which|this|that) (?:means?|refers? to) (?:that )?REST',
    ['Owls are {nocturnal}, which means they wake at night.', 'they wake at night'],
    'The {herald} came, and that meant trouble.',
  ),
  rule(
    'definition',
    'to do means',
    'BEGIN(?:to )W means to REST',
    ['To {forage} means to look for food.', 'look for food'],
    'The {squire} means to leave.',
  ),
  rule(
    'definition',
    'means',
    '["“]?W["”]?(?: \\w+)? (?:means?(?! to\\b)|refers? to|is (?:another|the|a) (?:word|name|term) for) (?:that )?REST',
    ['The word {drought} refers to a long time without rain.', 'a long time without rain'],
    'The {squire} means to leave.',
  ),
  rule(
    'definition',
    'is a',
    'BEGIN(?:an? |the word )?W (?:is|are) (?<clue>KIND\\b[^.;!?]+)',
    ['A {quarry} is a pit where stone is cut.', 'a pit where stone is cut'],
    'The {quarry} is on the left.',
  ),
  rule(
    'definition',
    'the one is a thing that',
    'W (?:is|are|was|were) (?<clue>(?:an?|the) [^.;!?,]*\\b(?:that|which|who|where|used|for)\\b[^.;!?]+)',
    ['The {loom} is a frame that holds threads.', 'a frame that holds threads'],
    'The {loom} is a gift.',
  ),
  rule(
    'synonym',
    'also called',
    'W,? (?:also|sometimes|otherwise|often) (?:called|known as|named) (?:an? |the )?PART',
    ['A {cougar}, also called a mountain lion, ran.', 'mountain lion'],
    'The {cougar} also called.',
  ),
  rule(
    'definition',
    'is called',
    'BEGIN(?<clue>[^.;!?,]{3,}?),? (?:is|are|was|were) (?:often |sometimes |usually )?(?:called|known as|named|termed) (?:an? |the )?["“]?W',
    ['A young beetle is called a {larva}.', 'A young beetle'],
    'People called the man a {hermit}.',
  ),
  rule(
    'definition',
    'called',
    '(?<clue>\\b(?:an?|some|small|tiny|large|special)\\b[^.;!?,]*?),? (?:called|known as|named) (?:an? |the )?["“]?W',
    ['They used a bent blade called a {sickle}.', 'a bent blade'],
    'She called the {bailiff}.',
  ),
  rule(
    'form',
    'that is',
    'W[,;:]? (?:[—–] )?(?:that is(?: to say)?|i\\.e\\.|in other words|meaning|namely),? REST',
    ['He was {valiant}, that is, brave, at all times.', 'brave'],
    'The {herald} that is late may wait.',
  ),
  rule(
    'form',
    'in other words',
    'W[^.!?]*[.!?]["”]? (?:In other words|That is to say),? REST',
    ['He was {famished}. In other words, he was starving.', 'he was starving'],
    'He was {famished}. In town, he ate.',
  ),
  rule(
    'form',
    'comma or',
    'W(?:,| [(—–]) ?or (?:an? )?(?<clue>[^.,;!?)—–]{2,40})[.,;!?)—–]',
    ['The land was {arid}, or dry, for miles.', 'dry'],
    'Is it a {bassoon}, or does it sing and shout and ring all day and all night long?',
  ),
  rule(
    'definition',
    'comma and a kind',
    'W, (?<clue>(?:an?|someone|somebody|something|one|any|a (?:kind|type|sort) of|people|animals|plants|the (?:part|place|person|name|kind|art|study|act|time))\\b[^.;!?,]*)(?=[,.;!?](?! (?:and|or)\\b))',
    ['A {cook}, someone who makes meals, came.', 'someone who makes meals'],
    'The {alderman}, Mr. Gannet, came.',
  ),
  rule(
    'definition',
    'that is when',
    'W[^.!?]*[.!?]["”]? (?:That|This|It) (?:is when|is where|means|is what)\\b(?: that| to)? ?REST',
    ['He feared a {mutiny}. That is when sailors rise up.', 'sailors rise up'],
    'He feared a {mutiny}. That is sad.',
  ),
  rule(
    'example',
    'such as',
    'W(?: \\w+){0,3},? (?:such as|including|for example|for instance|e\\.g\\.|especially|among them),? REST',
    ['{Reptiles} such as snakes and lizards bask.', 'snakes and lizards bask'],
    'We spoke of the {heron}. For example, on Monday it rained.',
  ),
  rule(
    'example',
    'like',
    'W,? like (?!(?:an?|the|my|his|her|this|that|it) \\w+[.!?])REST',
    ['He had {quirks}, like wearing two hats and humming.', 'wearing two hats and humming'],
    'I like the {gazebo} best.',
  ),
  rule(
    'form',
    'brackets',
    'W(?: \\w+)? \\((?<clue>[^()]{2,})\\)',
    ['Look at the {crane} (a tall bird).', 'a tall bird'],
    'The crane (a tall bird) saw the {heron}.',
  ),
  rule(
    'form',
    'dash',
    'W(?: \\w+)? ?(?:[—–]|--| - ) ?(?<clue>[^—–.;!?]+)',
    ['Her {leaven} – a bit of old dough – rose.', 'a bit of old dough'],
    'Her well-known {leaven} rose.',
  ),
  rule(
    'form',
    'colon',
    'W(?: \\w+){0,3}: (?<clue>[^.;!?]+)',
    ['They lived on {hardtack}: plain dry biscuits.', 'plain dry biscuits'],
    'The {hardtack} was here at 10:30.',
  ),
];

/** Signals of contrast; they hold only for words whose meaning a contrast can tell. */
export const contrasting: readonly ClueRule[] = [
  rule(
    'contrast',
    'unlike',
    'BEGINunlike PART, SOMEW',
    ['Unlike his noisy sister, Wren was {taciturn}.', 'his noisy sister'],
    'They are not alike, and Wren was {taciturn}.',
  ),
  rule(
    'contrast',
    'unlike behind',
    'WIN,? unlike PART',
    ['Wren was {taciturn}, unlike his noisy sister.', 'his noisy sister'],
    'Wren was {taciturn} like me.',
  ),
  rule(
    'contrast',
    'although, word',
    'BEGIN(?:although|though|even though|while|whereas) INWIN, REST',
    ['Although it looked {docile}, it was fierce.', 'it was fierce'],
    'It looked {docile}, although it was not.',
  ),
  rule(
    'contrast',
    'although',
    'BEGIN(?:although|though|even though|while|whereas|despite|in spite of) PART, SOMEW',
    ['Although he had won, he was {despondent}.', 'he had won'],
    'He had won, and he was {despondent}.',
  ),
  rule(
    'contrast',
    'instead of',
    'instead of (?:INW)(?:[^,.;!?]*), REST',
    ['Instead of the {lavish} feast, they had a plain supper.', 'they had a plain supper'],
    'They had a {lavish} feast instead.',
  ),
  rule(
    'contrast',
    'instead of, before',
    'instead of (?<clue>[^,.;!?\u0001]+),? SOMEW',
    ['Instead of a plain supper, a {lavish} feast came.', 'a plain supper'],
    'A {lavish} feast came instead.',
  ),
  rule(
    'contrast',
    'rather than',
    'WIN,? (?:rather than|instead of|and not|not) PART',
    ['He wanted a {rigorous} practice rather than an easy one.', 'an easy one'],
    'He wanted a {rigorous} practice.',
  ),
  rule(
    'contrast',
    'not but',
    '\\bnot (?!just|only|merely|even|simply)PART?,? but SOMEW',
    ['It was not smooth but {rugged}.', 'smooth'],
    'It was {rugged} but dry.',
  ),
  rule(
    'contrast',
    'but',
    'WNEAR[,;]? (?:but|yet|whereas|although|though|while) REST',
    ['My left hand is {dexterous}, yet my right one is clumsy.', 'my right one is clumsy'],
    'My hand is {dexterous} and quick.',
  ),
  rule(
    'contrast',
    'but, word behind',
    'BEGIN(?<clue>[^.;!?\u0001]+?),? (?:but|yet|whereas|while) LATERW',
    ['The new one is strong, but the old one was {flimsy}.', 'The new one is strong'],
    'The new one is {flimsy}.',
  ),
  rule(
    'contrast',
    'however, next',
    'WNEAR[.!?]["”]? (?:[^.,!?]{1,30}, )?(?:instead|however|but|on the other hand|in contrast|on the other|yet),? REST',
    ['The film was {tedious}. Instead, it should have been exciting.', 'it should have been exciting'],
    'The film was {tedious}. We left.',
  ),
  rule(
    'contrast',
    'however, before',
    '(?<clue>[^.!?]+)[.!?]["”]? (?:(?:instead|however|but|on the other hand|in contrast)\\b,?|[^.,!?]{1,30}, (?:however|on the other hand|though|by contrast),) LATERW',
    ['All were on time. Finch, however, was {tardy}.', 'All were on time'],
    'All were on time. Finch was {tardy}.',
  ),
];

/** Signals of cause and result; they hold only for words whose meaning those can tell. */
export const causing: readonly ClueRule[] = [
  rule(
    'cause',
    'so that',
    '\\b(?:so|such an?) W(?: \\w+){0,2} that REST',
    ['It was so {brittle} that it snapped.', 'it snapped'],
    'She bought {twine} so that she could tie it.',
  ),
  rule(
    'cause',
    'because',
    'WNEAR,? (?:because(?: of)?|since|due to|thanks to|as a result of) REST',
    ['Lark was {elated} because she had won.', 'she had won'],
    'Lark was {elated} then.',
  ),
  rule(
    'cause',
    'because, before',
    'BEGIN(?:because(?: of)?|since|as(?! a result| well| soon| long)|due to|thanks to|owing to) (?<clue>[^,.;!?\u0001]+), SOMEW',
    ['Because he had not slept, Rook was {weary}.', 'he had not slept'],
    'He had not slept, but Rook was {weary}.',
  ),
  rule(
    'cause',
    'because word, then',
    'BEGIN(?:because(?: of)?|since|as(?! a result| well| soon| long)|due to|thanks to|owing to) INW(?:[^,.;!?]*?, | \\w+ )REST',
    ['Since it was so {cumbersome}, three had to move it.', 'three had to move it'],
    'It was {cumbersome} since May.',
  ),
  rule(
    'cause',
    'so',
    'WNEAR[,;]? (?:and )?(?:so(?! that| much| many)|therefore|thus|for (?:that|this) reason|as a result),? REST',
    ['The ice was {treacherous}, so we crawled.', 'we crawled'],
    'The ice was {treacherous} so that we might see.',
  ),
  rule(
    'cause',
    'so, word behind',
    'BEGIN(?<clue>[^.;!?\u0001]+?),? (?:and )?(?:so(?! that| much| many)|therefore|thus|as a result),? LATERW',
    ['No rain fell, so the corn {withered}.', 'No rain fell'],
    'No rain fell and the corn {withered}.',
  ),
  rule(
    'cause',
    'that is why',
    'WNEAR[.!?]["”]? (?:that is why|that’s why|that\'s why|this is why|as a result|so|therefore|for (?:this|that) reason|because of (?:this|that)|(?:this|that) (?:made|meant))\\b,? REST',
    ['Oil was {scarce}. That is why one lamp had to do.', 'one lamp had to do'],
    'Oil was {scarce}. That is sad.',
  ),
  rule(
    'cause',
    'as a result',
    '(?<clue>[^.!?]+)[.!?]["”]? (?:that is why|as a result|so|therefore|for (?:this|that) reason|because of (?:this|that)|(?:this|that) (?:made|meant))\\b,? LATERW',
    ['She spilled ink on it. This made it {illegible}.', 'She spilled ink on it'],
    'She spilled ink on it. It was {illegible}.',
  ),
  rule(
    'cause',
    'for',
    'WNEAR, for (?<clue>(?:he|she|it|they|we|i|you|the|there|his|her|their|its|nobody|no one)\\b[^.;!?]+)',
    ['He was {anxious}, for he had lost the key.', 'he had lost the key'],
    'He was {anxious} for a day.',
  ),
];
