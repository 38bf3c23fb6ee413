import { rulesOf, type Rule } from './rule.js';

/** Faults that are thrown at a person; harmless when said of a story. */
const faults =
  'stupid|dumb|dumber|dumbest|ugly|uglier|fat|fatter|thick|slow|slower|lazy|boring|annoying|weird|gross|disgusting|dirty|smelly|stinky|useless|' +
  'hopeless|pathetic|rubbish|trash|garbage|terrible|awful|horrible|mean|nasty|selfish|babyish|childish|crazy|mental|insane|poor|weak|skinny|' +
  'spotty|hairy|lame|cringe|cringy|embarrassing|fake|creepy|wimpy|clumsy|greedy|spoilt|bossy|jealous|desperate|lonely|infected|cursed|toxic|' +
  'worst|worse|worthless|pointless|waste|joke|clown|baby|babies|liar|cheat|cheater|thief|copycat|coward|chicken|crybaby|cry baby|snitch|tell tale|tattletale|' +
  'sneak|suck up|teachers pet|swot|nerd|geek|dork|nothing|nobody|problem|bad at|no good|out|alone|disease|freak|monster|witch|toad|rat|pig|cow|' +
  'dog|donkey|monkey|ape|snake|worm|slug|whale|elephant|hippo|potato|bum|mistake|burden|disgrace|failure|unwanted|unloved|disappointment|dense|' +
  'brainless|clueless|hideous|vile|smell|stink|mad|nuts|bonkers|sad|sick|tiny|short|shorty|ginger|four eyes|bighead|big head|show off|know it all|too (?:slow|late|young|small|big)';

const words =
  'answer|answers|question|questions|sum-?up|sum up|idea|ideas|prediction|predictions|reply|post|posts|guess|spelling|writing|reading|turn';

/** Words that may hurt a person of the class without a rude word in them. All of them are this project's own choice. */
export const hurtfulRules: readonly Rule[] = rulesOf('hurtful', [
  [
    'nobody likes you',
    'nobody ~2 (?:like|likes|want|wants|wanted|need|needs|needed|invited|care|cares|cared|listen|listens|talk|talks|play|plays|sit|sits|chose|choose|chooses|pick|picks|picked|miss|misses|missed|loves|believes|trusts|would|will|borrows|is) ~3 (?:{you}|{your} \\S+)',
    'nobody in here likes you',
    'nobody likes the wolf',
  ],
  [
    'nobody asked',
    '(?:who) (?:invited|let|brought|allowed) (?:the|that|this) (?:weird|smelly|new|fat|ugly|annoying|loser|stupid|boring|slow|baby|little)(?= )|(?:nobody|who) (?:asked|invited|cares what|let|picked|chose|would want|wants|likes|said) (?:{you}|you in|you to)|{start}(?:nobody|who) asked{end}',
    'who invited you',
    'nobody asked the king',
  ],
  [
    'everyone against you',
    '(?:everyone|everybody|we|we all|they|they all|people|i|all of us|none of us|the whole \\S+|the (?:others|class|group|team|girls|boys)|my mum|half the class) ~3 (?:hate|hates|hated|dislike|dislikes|cant stand|laugh at|laughs at|laughed at|laughing at|making fun of|sick of|avoid|avoids|fed up with|talk about|talks about|talking about|bored of|better without|better off without|happier without|happier before|better before|were fine before|had fun before|feel sorry for) ~1 (?:{you}|{your} \\S+)',
    'everyone is laughing at you',
    'everyone laughed at the giant',
  ],
  [
    'not wanted',
    '(?:we|i|they|us|lets|group|team) ~1 (?:dont|didnt|never|not|wont|wouldnt) ~2 (?:want|need|like|care about|pick|choose|invite|miss|let|be friends with|work with|play with|sit with|sit next to) ~1 (?:{you}|{your} \\S+|you in)|we dont want (?:him|her|them|that one)|the new (?:girl|boy|kid) ~4 (?:weird|strange|stupid|smells?|ugly|annoying|dont|nobody)|dont (?:talk to|play with|sit with|sit next to) (?:her|him|them)',
    'we dont want you in our team',
    'we dont want to stop reading',
    '\\S+ ~6 you to (?:know|say|tell|think)',
  ],
  [
    'leave somebody out',
    '(?:dont|never|nobody|stop|lets not|you must not|you cant) (?:answer|talk to|speak to|listen to|play with|sit with|sit near|sit next to|sit by|invite|pick|choose|help|reply to|trust|be friends with|work with|touch|go near|let|like|vote for|look at|laugh with|read with) ~1 §|(?:ignore|avoid|block|leave out|get rid of|kick out) ~1 §|pretend ~3 (?:not|isnt|arent|wasnt) (?:there|here|real)',
    'dont answer Wren',
    'dont answer yet',
  ],
  [
    'told to go',
    '{start}(?:just |you should )?quit(?: already| now| the group)?{end}|{start}(?:you )?(?:can |should |better )?go (?:and )?(?:sit|play|cry|live|stand|work|eat) ~2 (?:somewhere|else|alone|by yourself|on your own|over there|there|in the corner|about it|to your)|{start}(?:go (?:and )?(?:drown|die|rot|choke|play in traffic|jump off|get run over|eat grass|hide)|go away|get lost|get away|get out of (?:here|our|this)|get out{end}|go home|leave us|leave our|leave the (?:group|class|chat)|get a life|buzz off|clear off|push off|bog off|sod off|naff off|hop off|jog on|go cry|go back to (?:where|your|the)|back off|do one)',
    'go sit somewhere else',
    'they tell him to go and sit somewhere else',
  ],
  [
    'go back where you came from',
    'go back (?:home )?(?:to )?(?:where (?:you|ur|your)|your (?:own )?(?:country|planet|cave|zoo))|(?:speak|learn) english|you talk funny|{your} (?:kind|sort|type|people)',
    'go back to where you came from',
    'he wants to go back to where he lived',
  ],
  [
    'told to be quiet',
    'shut ?up|sh?hut up|shut (?:your|ur|it|the|ya|that)(?: \\S+)?|shaddup|shuddup|shutup|zip it|be quiet §|belt up|pipe down|nobody wants to hear|stop talking ~2 you',
    'shut up',
    'shut the door he said',
    'shut (?:the|that|it) (?:door|gate|window|box|book|shop|lid|hatch|cage|chest)',
    '(?:he|she|they|it|the \\S+|pirate|king|queen|wolf|captain|witch|who) ~2 (?:says|said|shouts|shouted|yells|yelled|tells|told|hissed|roared|cried|screamed)',
  ],
  [
    'a fault of you',
    `(?:{youare}) {very}(?:${faults})`,
    'you are so slow',
    'you are right about the slow worm',
    '(?:you|ur|your|§) (?:out loud|of|the|mean).*|§ (?:short|out|dog|cat|alone|nothing|nobody|sad|mad|poor|tiny|too late|worse|problem|clown)|§ is right.*',
  ],
  [
    'you named a fault',
    `{start}(?:you|ur|your) {very}(?:\\S+ )?(?:${faults})|(?:are|r|is) {you} {very}(?:${faults}|adopted|gay|blind|deaf|special|for real|okay in the head|ok in the head)|(?:look|looks|act|acts|sound|sounds|smell|smells|talk|talks) like (?:a|an|the|your|my|you|ur)(?: \\S+)? ~1 (?:${faults}|bin|toilet|dump|sewer|granny|gran|grandad|potato|scarecrow|boy|girl|tramp)`,
    'are you thick',
    'does it smell like a rose',
  ],
  [
    'you look like',
    '(?:you|§) (?:look|looks|smell|smells|sound|sounds|act|acts|talk|walk|eat|eats|dress|read|reads|write) (?:like|so|weird|funny|bad|gross|disgusting|awful|horrible|stupid|terrible)',
    'you look like the witch',
    'you look in the cave',
  ],
  [
    'you do something shameful',
    '{you} (?:\\S+ )?(?:suck|sucks|stink|stinks|smell|smells|reek|reeks|pong|pongs|whiff|farted|farts|fart|drool|dribble|burped|cheat|cheated|lied|lie|ruin|ruined|ruins|spoil|spoils|wet|peed|pooed|cried|cry|cries)|(?:you|§) (?:always|never) (?:cr(?:y|ies)|wash|washes|shower|showers|brush|get|gets|have|has|shut|shuts|learn|learns|listen|listens|understand|understands|help|helps|share|shares|change|changes|do|does|finish|finishes|win|wins|lose|loses|stop|stops|copy|copies|cheat|cheats|smell|smells|sit|sits|ruin|ruins|mess|messes|moan|moans|lie|lies|fail|fails|show|shows|eat|eats|wear|wears|say|says|last|late|alone|wrong|boring|the)(?! (?:good|great|nice|best|first))|{you} (?:cant|couldnt|wont|dont|didnt|arent|isnt|wasnt|werent) (?:even|ever|read|spell|write|count|talk|do anything|understand anything|get it|get anything|have (?:any )?friends|belong|fit in|matter|count|deserve|welcome|invited|allowed|normal)',
    'you never wash',
    'you never know what the fox does',
    '',
    '(?:so|that|when|if|where|until|then|means|time|dark|cold|deep|far|cave|which) ~3 you (?:cant|couldnt|never|always|only|wont)|you (?:never|cant) (?:know|tell|see)',
  ],
  [
    'cannot even',
    '{you} ~2 (?:even|finally|barely|still) \\S+|(?:do|did|does|can|could|have|has|are|is|were|was|how did) (?:you|§) even|even a (?:baby|toddler|dog|monkey|kid|child)',
    'did you even go to school',
    'even if you go the fox waits',
    '(?:you|§) ~2 even (?:if|though|when|the)|(?:you|§) ~2 still (?:think|want|agree|know|there)|how do you even .*',
  ],
  [
    'took you so long',
    'took (?:you|§) (?:long|ages|so|forever|an|a|\\S+) ?\\S*|slow clap|tick tock|hurry up (?:§|slow|snail)|(?:you|§) (?:is |are )?still (?:reading|not done|not finished|on page)|come on slow|(?:too )?slow as always|we are all waiting for (?:you|§)',
    'it took you ten minutes',
    'it took them two days',
    'still reading (?:it|the|this|about)',
  ],
  [
    'cursing',
    'f you|eff (?:you|off|this)|f off|f (?:this|that)|go to hell|what the (?:hell|f)|bloody hell|lick my \\S+|up yours|kiss my \\S+|bite me|screw (?:you|this)|damn (?:you|it|this)|sod (?:you|this)|get stuffed|suck (?:it|my)|piece of (?:poo|poop|dirt|rubbish|trash|garbage)|(?:donkey|pea|bird|fish|goldfish|potato|monkey|chicken|cow|mush|sheep|worm|tiny|half a|no|rat|pig|dog) brains?|middle finger',
    'f you',
    'the well is deep',
  ],
  [
    'mock praise',
    'nice try (?:\\/ )?(?:\\S+ ){0,2}(?:for you|loser|baby|§)|(?:well done|congrats|congratulations|good job|bravo|clever) (?:genius|einstein|captain obvious|you can|sherlock|for once|on finally)|thanks for nothing|good luck with that|wow (?:you|§) (?:can|know|did|got|read)|(?:cry|moan) about it|are you going to cry|boo hoo|diddums|aw+ ~4 baby|did the baby|run (?:back )?to (?:your )?mum|tell (?:your|ur) mum|{start}someone needs a (?:nappy|diaper|dummy)',
    'aww did the baby not get it',
    'he did cry like a baby',
  ],
  [
    'sad to be you',
    '(?:feels?|felt) sorry for {you}|what is wrong with {you}|whats wrong with {you}|can you not|{start}(?:oh )?(?:not )?(?:you|it is you) again|go back to (?:bed|year|nursery|baby|sleep|your)|we dont do \\S+ in|{start}(?:such a |you )?(?:b a b y|baby){end}|dad ~2 in (?:prison|jail) (?:lol|haha)|(?:keep|shove) ~4 to yourself|do (?:us|everyone) ~1 a favour|(?:lol|laughing|laugh|haha) at (?:§|§s|you)|(?:thats|that is|its|it is) just sad{end}|{start}(?:go )?(?:eat (?:worms|dirt|mud|grass)|jump in)|(?:only|just) (?:picks?|chose|let|invited|likes?) {you}|dont be like §|you really thought|not a question{end}|{start}what a (?:baby|clown|joke|loser|mess|cry ?baby)|{start}(?:fat|silly|stupid|lazy|dirty|ugly|old|smelly|big|nasty) (?:cow|pig|git|slob|lump|toad|moo|hag|bag){end}|saved (?:a|no) seat for|must be ~2 (?:being|to be|like) {you}|(?:imagine|glad|thank god|lucky) ~2 (?:being|not|i am not|to be|im not) ~1 {you}|i feel sorry for (?:you|§)|(?:shame|pity) about {your}',
    'must be sad being Wren',
    'must be cold being a seal',
  ],
  [
    'people like you',
    '(?:people|kids|someone|children|losers|those|others|girls|boys) like {you}|the likes of you|you people',
    'people like you never lead',
    'people like cake',
  ],
  [
    'that is why you',
    '(?:that is|that|is|this is|probably) why (?:you (?:have|dont|never|got|are|always|cant|sit|eat|get|smell|lost|play)|nobody|everyone ~2 you|no one|§ (?:has|dont|never|is|cant|sits|eats))',
    'that is why you have no friends',
    'that is why you need a coat',
  ],
  [
    'if you were a',
    'if you (?:were|was) (?:a|an|the|any|more|less|not|in) ~9 (?:one|nobody|least|worst|no|never|lose|last|die|bin|trash|would be)|(?:if|when) i (?:looked|smelled|smelt|talked|was|were|read) ~1 (?:like|as \\S+ as) {you}',
    'if you were a book nobody would read it',
    'if you were a fox would you wait',
  ],
  [
    'bet your parents',
    '(?:bet|wonder if|does|do|did|has|is|are) ~1 {your} (?:{family}) ~5 (?:even|love|loves|like you|smell|smells|poor|ugly|fat|drunk|prison|jail|real|wash|washes|feed|regret|sorry|proud|ashamed|hate|hates|left|cant|buy|dress|cut|related|dumb|stupid|weird|work|job|wish|wishes|want|wanted|bald|know)|bet you (?:dont|cant|still|smell|are|were|wet|cried|cry|sleep)|{your} (?:{family}|mums|dads) (?:is|are|was|looks|smells|lost|cant|dont|has|must|should|left|hates|wishes|never|probably|so|works|got|drives|doesnt)',
    'bet your parents wish they had a different kid',
    'bet your answer is right',
    '(?:do|does|did) {your} (?:{family}) (?:read|like to read|help|know this).*',
  ],
  [
    'your body or things',
    '{your} (?:\\S+ )?(?:{body})(?! (?:is|are|looks?) (?:so |really |very )?(?:nice|cool|pretty|lovely|great|good))|why (?:is|are|do|does) {your} (?:{body})|how much (?:do|does) {you} weigh|(?:did|do|does|when did) {you} (?:have|take|get) a (?:bath|shower|wash)',
    'your shoes are massive',
    'your question about shoes is good',
  ],
  [
    'why are you so',
    'why (?:do|does|are|is|did|dont|would|were|cant|wont|have|has) {you} ~2 (?:always|even|still|so|wear|wears|wearing|look|looks|smell|smells|walk|cry|crying|here|bother|exist|trying|act|dress|alone|breathe|eat|eats|normal|alive|shower|wash|talk like|sit alone|never|like that|like this)',
    'why do you always wear that',
    'why do you think the fox always eats',
  ],
  [
    'your work is bad',
    `(?:{your}|that|this|such a|what a|whose) ~2 (?:${words}) ~3 (?:dumb|stupid|rubbish|garbage|trash|awful|terrible|sucks|suck|sucked|bad|boring|pathetic|useless|lame|joke|pointless|babyish|worst|dumbest|disgrace|embarrassing|cringe|waste)|(?:worst|dumbest|stupidest|laziest|slowest|lamest|most boring|most stupid|stupid|dumb|rubbish|trash|garbage|pathetic|lame|babyish) (?:${words}|leader|reader|group member|pupil)|(?:worst|dumbest|stupidest|ugliest|laziest|slowest|weirdest|fattest|smelliest) ~1 (?:one|person|kid|boy|girl|reader|leader) ~2 (?:class|group|school|here)`,
    'that is the dumbest answer ever',
    'this text is stupid',
    'this (?:text|story|book|part) .*',
  ],
  [
    'look at somebody',
    'look at (?:§|you)(?= (?:\\/|§|$|lol|haha|he|she|trying|with|go|in|the|a|so|being|over|all|everyone|everybody)| $)|(?:oh )?look (?:it is|who|who is|its) (?:the|it is|is|came|finally|here|back|talking|§)|(?:did|has) (?:you|anyone|everyone) (?:see|seen|hear|heard|notice|noticed|smell) ~2 (?:§|§s)(?! (?:question|answer|idea|point|sum-up|summary|reply|post|prediction|drawing|picture|said|wrote|asked))',
    'look at Wren',
    'look at the last line',
  ],
  [
    'guess who',
    'guess (?:who|whos|whose|which (?:kid|girl|boy))|(?:we all|everyone|everybody|you all) (?:know|knows) (?:who|what|about|why)|i (?:know|saw|heard) what (?:you|§)|i (?:wont|am not going to|wouldnt) (?:say|tell) who|(?:want to|do you want to|who wants to) (?:know|hear) (?:a|the|her|his|§s|my) (?:secret|gossip)|told (?:me|us) ~1 secret|secret about ~2 §|(?:has|have|got) a crush|(?:going|went) out with §|broke up|(?:fancies|kissed|snogged|dumped|loves|is in love with) (?:§|someone in|a (?:boy|girl) in)|§ (?:fancies|kissed|loves|likes a|dumped)|pass it on|rumou?r ~3 (?:{you}|class|school|group)',
    'guess who wet the bed',
    'i guess who did it in the end is the crow',
    '',
    'i guess',
  ],
  [
    'voted out',
    '(?:we|they) (?:had|took|have|all) (?:a )?(?:vote|voted)|voted? ~2 (?:out|off)|(?:kick|kicked|kicking|throw|get) {you} out|(?:i am|im|we are|we|i will|i would) (?:leaving|leave|quit|quitting|out|off|not coming|not playing) (?:if|because|when|now) ~3 {you}|{you} (?:is|are) (?:coming|joining|leader|leading|in|in it|playing|here) ~2 (?:i am|im|we are|i will|we) ~1 (?:leaving|leave|quit|out|off|not|going)|not with {you}|rather ~5 than ~4 {you}|any(?:one|body) (?:but|except|else than|other than) {you}|every(?:one|body) (?:but|except|apart from) {you}|without (?:you|§) we|(?:before|since|until) {you} (?:came|joined|got here|moved here|turned up)',
    'we were happier before you came',
    'the crow came before the fox',
  ],
  [
    'eats alone',
    '(?:the|one|kid|girl|boy) (?:one )?who (?:eats|sits|plays|reads|lives|walks) (?:alone|by (?:himself|herself|themselves)|on (?:his|her|their) own) ~3 (?:lol|haha|class|group|here)|the one who (?:eats|sits) alone|(?:no|zero|any|0) (?:friends|mates)|no friends|(?:go|get|make) some friends|get a friend',
    'oh look the one who eats alone',
    'the bear has food',
    '',
    '(?:he|she|it|they|the \\S+|robot|wolf|fox|duck|who) ~2 (?:has|have|had|got|with|find|make) ~1 (?:no|any|some|a) (?:friends|friend|mates)',
  ],
  [
    'starts with a letter',
    '(?:problem|loser|stupid|weird|smelly|slow|worst|ugly|annoying|person|kid|one|name) ~9 (?:starts|begins) with \\p{L}(?= )',
    'the problem in this group starts with f',
    'the word starts with f',
    '',
    'word ~3 (?:starts|begins)',
  ],
  [
    'insult by group',
    '(?:that|this|it|he|she|you|ur|§) (?:is |are )?(?:so |well |such a )?gay(?: boy)?|gayboy|lesbo|(?:boys|girls) (?:cant (?:be|lead|read|write|do|play|spell|run|count|think)|are (?:stupid|dumb|rubbish|weak|useless))|(?:dirty|filthy|stinking|bloody) (?:foreigner|foreigners|immigrant|immigrants|muslim|muslims|jew|jews|gypsy|gypsies|traveller|travellers|pole|poles|indian|indians|african|africans|arab|arabs|mexican|mexicans)|(?:all|those|these|most|such|the) (?:\\S+ )?(?:people|kids|foreigners|immigrants|refugees|muslims|jews|christians|hindus|gypsies|travellers|blacks|whites|asians|africans|indians|chinese|poles|romanians|disabled|gays|poor people|fat people|ginger kids|boys|girls) ~3 (?:are|should|stink|smell|steal|cant) ~2 (?:dirty|stupid|dumb|evil|thieves|smelly|terrorists|criminals|lazy|animals|die|burn|go home|go back|leave|disgusting|scum|rats|weird|gross|liars|ugly|inferior|steal|smell|stink|read|drive|talk)',
    'girls cant lead',
    'the boys cant row the boat any more',
    '',
    '(?:story|in the text|thinks that|says that|says|said|thought|believed)',
  ],
  [
    'a baited word',
    'baby (?:§|brain|face|boy alert)|{start}(?:big |fat |cry |little |such a )+ ?baby|bunch of (?:babies|losers|idiots|cheats|rubbish)|(?:as|so) (?:thick|dumb|dense|slow) as|has (?:nits|lice|fleas|worms|the lurgy|cooties|germs)|the lurgy|cooties|dont sit near|(?:{you}|he|she|who|it|class|group|room|here|kid|girl|boy) ~3 smells? of (?:wee|pee|poo|poop|sick|bins?|fish|cabbage|onions)',
    'swap seats, he has nits',
    'the baby seal swam',
  ],
  [
    'picking a fight',
    '(?:i|we) (?:will|am going to|are going to) (?:get|show|tell everyone (?:about|that)) {you}|you will (?:pay|regret|be sorry|see)|fight me|or else{end}|you (?:owe|better) (?:me|watch|not)|wait till (?:i|we) (?:get|see|find) you|meet me outside',
    'you will pay for that',
    'the troll made him pay',
  ],
  [
    'hate you',
    '(?:i|we|we all|everyone|they) (?:\\S+ )?(?:hate|hates|cant stand|despise) (?:{you}|your guts|ur guts|{your} \\S+)',
    'i hate your guts',
    'i hate the witch',
  ],
  [
    'eww',
    '(?:eww?|yuck|ugh|bleh|pfft) ~2 (?:{you}|you again|your)|(?:§|you) (?:is|are) (?:eww?|yuck)|(?:drop|step|touch(?:ed)?) ~2 § ~2 (?:germs|eww?)',
    'ew its Wren',
    'ew a slug',
  ],
]);
