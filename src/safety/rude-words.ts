/**
 * Rude and hurtful words, playground level and worse, so that a post that holds one waits for an adult. "always": rude
 * wherever it stands, unless the passage itself has it. "aimed": harmless of a story, held when it is thrown at a person,
 * stands alone or comes in disguise. The list is this project's own choice.
 */
export const always: readonly string[] = (
  'fuck fucker fucking fuk fck fuq phuck phuk fuc fvck fk fkn fkin wtf wth wtaf wtfh stfu stfd gtfo gtf lmfao lmfaooo omfg ffs fml idgaf idfc gfy sybau milf dilf dtf mofo mfer mfs pos jfc kys kms ' +
  'shit shite shitty shitting bullshit horseshit batshit apeshit chickenshit dipshit shitload shitshow gobshite shitehawk sht crap crappy crapping crapped piss pissed pissing pisser pissy pisstake pisshead ' +
  'bitch bitchy bitching biatch btch bastard cunt cunty twat twatty wank wanker wanking wanky tosser tosspot bollocks bollox bollock bollix bugger buggered sodding arse arsed arsey arsehole arselicker arsewipe ' +
  'ass asshole asswipe asshat assface asses dumbass jackass badass kickass smartass fatass lardass dumbarse fatarse smartarse lazyass bigass arsebiscuit ' +
  'dick dickhead dickwad dickface dickweed dickwit dicknose prick cock cocksucker cockhead cockwomble knob knobhead knobber knobend nob nobhead nobend bellend bell-end helmethead penis penises willy schlong dong wiener ballsack ballbag nutsack nads scrotum testicle testicles ' +
  'vagina vulva vag fanny minge foof foofoo coochie cooch clit pussy tit tits titty titties boob boobs boobies boobie nipple nipples pube pubes pubic ' +
  'slut slutty slag slapper whore hoe thot thots skank sket tart hooker prostitute pimp perv pervert pervy pedo paedo nonce pedophile paedophile molester molest porn porno pornhub onlyfans hentai horny sexy sexting sext nudes ' +
  'boner stiffy erection dildo vibrator blowjob handjob rimjob bj fap fapping masturbate masturbating orgasm jizz spunk cum cumming rape raped rapist shag shagging humping threesome ' +
  'goddamn goddammit damn dammit damnit bloodyhell jesuschrist ' +
  'nigger nigga chink gook spic spick wop kike kyke paki pakis coon wetback raghead towelhead gyppo gypo gyppos pikey pikeys chav chavvy wog dago golliwog jap honky gringo cracker-boy sandnigger ching-chong chingchong abbo boong redskin squaw halfcaste half-caste ' +
  'fag faggot fagot dyke lezzer lezza lesbo lezbo homo queer tranny trannie shemale ladyboy poof poofter pouf ponce batty battyboy bender bumboy ' +
  'retard retarded retards tard libtard fucktard spaz spastic spacker spacko spazzy mong mongol mongo cripple crip window-licker windowlicker schizo autist sperg ' +
  'nazi hitler douche douchebag douchey scumbag scum turd turds feck fecker fecking frigging frickin fricking effing freaking minger minging munter muff gash jerkoff motherfucker ' +
  'butthead buttface buttcheeks fuckface shitface shithead shitbag poo-face bumhole bunghole butthole bumcrack buttcrack asscrack fartface fartknocker wazzock pillock dumbfuck bawbag fannybaws tadger langer walloper gobdaw drongo dropkick ratbag'
).split(' ');

/** Words thrown at persons. */
export const aimed: readonly string[] = (
  'idiot idiotic idiots idoit idot ediot eejit stupid stoopid stupit stewpid stupidd stupider stupidest dumm dumb dumber dumbest dumbo dummy dum moron moronic imbecile cretin loser loserville weirdo freak freaky freakshow jerk git prat plonker muppet twit twerp berk twonk ' +
  'numpty nitwit dimwit halfwit airhead bonehead blockhead knucklehead meathead dunce wally wimp wuss wussy sissy pansy ugly uggo uglyface fatty fatso fattie lardo lardy tubby blubber ' +
  'chubby chubster piggy pig cow heifer rat skank scum trash garbage rubbish filth slob stinker stinky smelly fart farty fartypants poo poop pooface poohead poopoo poopyhead poopy poobrain pooey wee weewee bum bumface bumhead bumchum ' +
  'butt buttface nerd nerdy geek dork dorky dweeb creep creepo psycho nutter nutcase nutjob loony looney maniac lunatic mental thicko thickie thick dope dopey div divvy divvo plank mug mugs dingbat dingus ' +
  'crybaby cry-baby snitch snitches snot snotty snotface noob noobs nub scrub pathetic useless worthless brainless braindead brain-dead gaylord gayboy gaylords lowlife peasant pleb plebs sheeple ' +
  'simp incel sadcase saddo sadsack spanner doughnut donut numbskull numskull scaredy-cat scaredycat chicken clown pest brat cheater liar suckup suck-up kissup brownnose booger bogey bogeyface ' +
  'fathead bighead pinhead birdbrain peabrain dipstick doofus goofball nincompoop nobrain tool troll goblin gremlin hag hagface hobo tramp gimp minion beast pizzaface metalmouth foureyes four-eyes tinribs lanky shortarse midget dwarf ' +
  'attention-seeker copycat tattletale telltale backstabber poser poseur wannabe tryhard try-hard bozo schmuck putz bimbo airbrain bufoon buffoon ignoramus simpleton dolt oaf clod dullard ninny ' +
  'bogan dag dero galah dill drip melt wetwipe wasteman bellpiece donut dinlo chump roaster dobber rocket radge muppets goon gobby stinkpot stinkface stinkbomb smellypants cootie cooties'
).split(' ');

/** Of the aimed ones, those that also name animals, things or trades: rude only where somebody is spoken to or of. */
export const onlyWithYou: ReadonlySet<string> = new Set(
  (
    'pig piggy cow rat chicken clown tool plank mug mugs spanner doughnut donut troll goblin gremlin chubby tubby filth rubbish trash garbage useless thick beast dwarf ' +
    'pest brat cheater liar maniac peasant wally dope div stinky smelly creep psycho lunatic noob rude snot butt sissy freak donkey jerk useless worthless mental hag tramp hobo ' +
    'heifer minion drip dill melt dag galah rocket roaster gimp midget wee poo poop bum booger bogey scrub pansy goon lanky bellpiece dolt oaf copycat helmet snitch nerd geek mug trash dummy blubber rat snotty beast'
  ).split(' '),
);

/** Of the rude ones, those that old or plain books use innocently: held where somebody is spoken to, or nothing of a story stands by. */
export const doubtful: ReadonlySet<string> = new Set(
  (
    'dyke ass asses tit tits boobies boobie chink hoe gay queer prick cripple faggot tart shag pussy knob nob willy spick sexy puff bum hell nazi hitler slag mongol slapper ' +
    'fanny dong bender cracker-boy jap helmethead muff gash coon pimp hooker ponce pouf vag spunk wiener damn half-caste halfcaste redskin squaw cum batty langer walloper dropkick humping nipple nipples erection testicle testicles prostitute bj fk rape raped scum tard crip'
  ).split(' '),
);

/** Phrases in which a listed word has an innocent sense, over the words as they are heard. */
export const innocent =
  /\b(?:(?:blue|great|coal|marsh|willow|long-tailed|crested) tits?|tits? (?:chase|fly|feed|nest|eat|sing|bird)|\d+ tits|wild ass(?:es)?|spick and span|(?:garden|old|rusty|a) hoe|hoed? the|cock (?:crow|crows|crowed|a doodle)|cocks? (?:and hens?|cant|dont|crow\w*|fight)|cocks?\b.*\b(?:hens?|crow\w*|farm\w*|birds?|roosters?|barley|pearls?|sun|dung|cockerels?|wings?|feathers?)|(?:hens?|crow\w*|farm\w*|birds?|roosters?|barley|fable)\b.*\bcocks?|the dyke|dykes? (?:is|was|keeps?|wall|holds?)|boob(?:y|ies) (?:are|is|bird|birds|nest|dive|have)|(?:chink|chinks) (?:of|in)|pussy ?willows?|pussy ?cats?|moby dick|dick (?:whittington|turpin|tracy|van)|shag (?:carpet|rug|bird|nest)|great shags?|pick and shovel|door ?knobs?|knobs? (?:of|on)|gay (?:with|and|as|means)|queer (?:little|old|sound|noise|feeling|tune|means)|homo (?:sapiens|erectus)|dumb (?:with|show|animals?)|struck dumb|deaf and dumb|tart(?:s)? (?:with|and|from)|(?:jam|apple|lemon|treacle|custard|cherry|fruit|egg|bakewell|strawberry) tarts?|tart (?:taste|apple)|prick(?:ed|s|le)? (?:her|his|its|my|the|a|up)|pricks? (?:of|from)|rat(?:s)? (?:ran|eat)|cripple creek|feck less|window pane|donkeys? ass|ass and|the ass (?:is|was|has|had|carr\w+|bray\w*|went|fell|stopp?\w*|says|thinks)|free willy|aunt fanny|dong of|ding dong|(?:mary|fannie|aunt) fanny|muff(?:s)? (?:for|of|to)|fender bender|nappa slag|slag heap|coal slag|rape ?seed|oilseed rape|beaver dam|pimp my|mental (?:maths|health|picture|image)|thick (?:skin|ice|fog|snow|fur|forest|woods?|walls?|soup|cloud|smoke|book|with|hair|mud|mist|air|as a (?:wall|tree)|ice|lips)|chicken (?:pox|soup|coop|feed|wing|nugget|leg|run)|pig (?:pen|sty|farm|iron)|cow (?:shed|bell|boy|hide)|rat (?:trap|race|catcher)|wee (?:bit|man|small|lad|lass|house|free)|tool ?(?:box|shed|kit)|bum (?:bag|a)|garbage (?:truck|man|bin|can|collector)|rubbish (?:bin|dump|heap|tip|truck|bag)|trash (?:can|bag)|fish and|crybaby bridge|beast of)\b/u;

/** Harmless words that a disguise of the above may happen to spell. */
export const harmless: ReadonlySet<string> = new Set(
  (
    'batch poppy bobbie bobby butters cocky cocked cocker carp morn rappers rapper rapped rapping spices spiced spicing spicer snooty snoot skeet skeeter skeeters damning ' +
    'assessing assessed assesses oc agin tardy shaggy poss ovid chinked muffy sessa dilly foder penner penistone monger mongers prickers pricked pricking dwarfed rocketeer retardant knobby knobbing twitter ' +
    'dumby slobber slobbers vibratory twitty jerkin prater simper simpers shiite carps crapes cockers cocking crapaud buttes tooling blubbered ' +
    'shiitake shitake pass glass grass class brass bass mass lass assess assassin asset assist hello shell as but bob loose looser looser dam dame bum-bee bass bases ' +
    'peacock cockerel cockpit cocktail woodcock weathercock hancock cockle titan title titmouse bluetit pussycat buttercup button butter butler dickens stein ' +
    'knobbly cumin document scrape scrap raccoon cocoon tycoon spice spicy hoes shoes phoebe tartan custard mustard bastion hotel coot boot thicket thicken thickened thicker thickest thickly thickness ' +
    'assume analyse therapist grape drape scrape snigger niggle digger bigger trigger angus prat-fall mongoose mongolia mongolian spaniel despicable fagin mentally mentality ' +
    'queen queens squeer rapeseed rapid therapy arsenal parse sparse coarse hoarse arsenic puss pussy-willow willow chinks 455 4s 5s a4 a5 b4 sass poser poses posed homer homes home hoed hoeing ' +
    'rated rating rates rater ratings rates cower cowed cowboy cowgirl pigs toolbox rated muggy mugged mugger muggers planks planked tooled geeky wees weed weeds weeding weedy wee-d weest dopes ' +
    'bumed bumped dumbing dumber-bell dumbbell dumbbells dumbledore butted button butting gited gits prated prating jerked jerking jerky freaked snotter mugger clowns clowned pester pestered pesters pested bratish bratty ' +
    'poser creeping creeped tarted tarting tarty pimped divs dived diver divers diving dives dived dives scrubbed scrubber scrubbing scrubs dagger daggers dagged berks muffed muffin muffins dills gimpy gimped dripped dripping drips drippy melted melting melts melter ' +
    'dinged dinger beasts roasters rockets rocketed ponced ponces hags haggard dongs dinges fannies dolts oafs clods clodhopper goons goonie goonies coons cooned gashed gashes gash raper jap japs japed mfs nob nobs nobody noble nobel noby ' +
    'cripes tats tatty poofed pooed moped mopes sexes sexed spunky cracker crackers slagged helmet helmets nadir nudest galahs nudes-painting crapaud wiener-schnitzel'
  ).split(' '),
);

/** Parts that are ordinary words and may stand before or after each other by chance ("pen is"). */
export const ordinaryParts: ReadonlySet<string> = new Set(
  (
    'a i is it in an as at be but by do go he hi his if me my no of off oh ok on or so to up us was we the and pen ass hit tit cock rat pig cow get let for ' +
    'all are you can not her him how who why had has did out now one two see saw say she too got old new big bad sad mad its im id ill am any bit cut ' +
    'put sit set run ran red ten ate eat end far few fun hat hen hot ice job key lot man men mom mum dad day dog cat nor our own pan per pet pot row sea ' +
    'sun tea tie tip toe top try use war way wet win won yes yet lose loser here ear car this that with ha ah um mr mrs dr vs pg bro'
  ).split(' '),
);

/** Endings that a rude word may take. */
export const endings = [
  's',
  'es',
  'ed',
  'd',
  'ing',
  'in',
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
  'pants',
  'bag',
] as const;
