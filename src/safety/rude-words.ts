/**
 * Rude and hurtful words, playground level and worse, so that a post that holds one waits for an adult. "always": rude
 * wherever it stands, unless the passage itself has it. "aimed": harmless of a story, held when it is thrown at a person,
 * stands alone or comes in disguise. The list is this project's own choice.
 */
export const always: readonly string[] = (
  'fuck fucker fucking fucked fuk fck fuq phuck phuk fuc fvck wtf stfu gtfo lmfao omfg ffs milf shit shite shitty shitting bullshit sht crap crappy ' +
  'crapping piss pissed pissing bitch bitchy biatch btch bastard cunt twat wank wanker wanking tosser bollocks bollox bugger arse arsehole ass ' +
  'asshole asswipe dumbass jackass badass smartass fatass lardass asshat dick dickhead dickwad prick cock cocksucker knob knobhead bellend penis ' +
  'willy vagina pussy tit tits titty boob boobs boobies slut slutty slag whore hoe skank tart perv pervert pedo paedo nonce porn porno horny ' +
  'sexy boner dildo blowjob jizz cum rape rapist goddamn damn dammit bloodyhell nigger nigga chink gook spic spick wop kike paki coon wetback ' +
  'raghead towelhead gyppo pikey chav fag faggot fagot dyke lezzer lesbo homo queer tranny shemale poof poofter batty retard retarded tard libtard ' +
  'spaz spastic spacker mong mongol mongo cripple window-licker nazi hitler douche douchebag scumbag scum turd feck fecking frigging freaking minger ' +
  'muff gash jerkoff shag shagging motherfucker mofo arsewipe buttface butthead buttface fuckface shitface shithead pisshead poo-face bumhole butthole'
).split(' ');

/** Words thrown at persons. */
export const aimed: readonly string[] = (
  'idiot idiotic idoit idot stupid stoopid stupit stewpid stupidd dumm dumb dumbo dummy dum moron moronic imbecile cretin loser weirdo freak freaky jerk git prat plonker muppet twit twerp ' +
  'pillock numpty nitwit dimwit halfwit airhead bonehead blockhead knucklehead dunce eejit wally wimp wuss sissy ugly fatty fatso lardo tubby ' +
  'chubby piggy pig cow rat skank scum trash garbage rubbish filth slob stinker stinky smelly fart farty poo poop pooface poohead poopoo wee bum bumface ' +
  'butt buttface nerd geek dork dweeb creep pervy psycho nutter nutcase nutjob maniac lunatic thicko dope dopey div divvy plank mug ' +
  'crybaby cry-baby snitch snot snotty snotface noob nub pathetic useless worthless brainless braindead gaylord gayboy lowlife peasant ' +
  'simp incel sadcase saddo spanner doughnut donut numbskull numskull scaredy-cat chicken clown pest brat cheater liar suckup booger ' +
  'fathead bighead birdbrain dipstick doofus goofball nincompoop twonk tool troll goblin gremlin'
).split(' ');

/** Of the aimed ones, those that also name animals, things or trades: rude only where somebody is spoken to or of. */
export const onlyWithYou: ReadonlySet<string> = new Set(
  (
    'pig piggy cow rat chicken clown tool plank mug spanner doughnut donut troll goblin gremlin chubby tubby filth rubbish trash garbage useless ' +
    'pest brat cheater liar maniac peasant wally dope div stinky smelly creep psycho lunatic noob rude snot butt sissy freak donkey jerk useless worthless'
  ).split(' '),
);

/** Of the rude ones, those that old or plain books use innocently: held where somebody is spoken to, or nothing of a story stands by. */
export const doubtful: ReadonlySet<string> = new Set(
  'dyke ass cock tit tits boobies chink hoe gay queer prick cripple faggot tart shag pussy knob willy dick spick sexy puff bum arse hell nazi hitler slag mongol'.split(
    ' ',
  ),
);

/** Phrases in which a listed word has an innocent sense, over the words as they are heard. */
export const innocent =
  /\b(?:(?:blue|great|coal|marsh|willow|long-tailed|crested) tits?|tits? (?:chase|fly|feed|nest|eat|sing|bird)|wild ass(?:es)?|spick and span|(?:garden|old|rusty|a) hoe|hoed? the|cock (?:crow|crows|crowed|a doodle)|the cock|the dyke|dykes? (?:is|was|keeps?|wall|holds?)|boob(?:y|ies) (?:are|is|bird|birds|nest|dive|have)|(?:chink|chinks) (?:of|in)|pussy ?willows?|pussy ?cats?|moby dick|shag (?:carpet|rug|bird|nest)|great shags?|pick and shovel|door knob|knob of|gay (?:with|and|as|means)|queer (?:little|old|sound|noise|feeling|tune|means)|homo sapiens|dumb (?:with|show|animals?)|struck dumb|deaf and dumb|tart(?:s)? (?:with|and|from)|(?:jam|apple|lemon|treacle|custard|cherry|fruit|egg) tarts?|tart (?:taste|apple)|prick(?:ed|s|le)? (?:her|his|its|my|the|a|up)|pricks? (?:of|from)|rat(?:s)? (?:ran|eat)|arse about|pissed it|cripple creek|feck less|window pane|donkeys? ass|ass and)\b/u;

/** Harmless words that a disguise of the above may happen to spell. */
export const harmless: ReadonlySet<string> = new Set(
  (
    'shiitake shitake pass glass grass class brass bass mass lass assess assassin asset assist hello shell as but bob loose looser looser dam dame bum-bee ' +
    'peacock cockerel cockpit cocktail woodcock weathercock hancock cockle titan title titmouse bluetit pussycat buttercup button butter butler dickens ' +
    'knobbly cumin document scrape scrap raccoon cocoon tycoon spice spicy hoes shoes phoebe tartan custard mustard bastion hotel retards coot boot ' +
    'assume analyse therapist grape drape scrape snigger niggle digger bigger trigger angus prat-fall mongoose mongolia spaniel despicable fagin ' +
    'queen queens squeer rapeseed rapid therapy arsenal parse sparse coarse hoarse arsenic puss pussy-willow willow chinks 455 4s 5s a4 a5 b4 sass'
  ).split(' '),
);

/** Parts that are ordinary words and may stand before or after each other by chance ("pen is"). */
export const ordinaryParts: ReadonlySet<string> = new Set(
  (
    'a i is it in an as at be but by do go he hi his if me my no of off oh ok on or so to up us was we the and pen ass hit tit cock rat pig cow get let for ' +
    'all are you can not her him how who why had has did out now one two see saw say she too got old new big bad sad mad its im id ill am any bit cut ' +
    'put sit set run ran red ten ate eat end far few fun hat hen hot ice job key lot man men mom mum dad day dog cat nor our own pan per pet pot row sea ' +
    'sun tea tie tip toe top try use war way wet win won yes yet lose loser here ear car this that with'
  ).split(' '),
);

/** Endings that a rude word may take. */
export const endings = [
  's',
  'es',
  'ed',
  'd',
  'ing',
  'er',
  'ers',
  'y',
  'ish',
  'est',
  'face',
  'head',
  'brain',
  'boy',
  'girl',
  'hole',
  'wit',
] as const;
