import { rulesOf, type Rule } from './rule.js';

/** Neglect, adults who ask for pictures or secrets, threats, running away. The list is this project's own. */
export const worldRules: readonly Rule[] = rulesOf('alarm', [
  [
    'no food',
    `(?:no|any|enough|nothing|havent got|isnt any|ran out of|run out of|out of|never any|not much|never enough) ~1 (?:food|to eat|dinner|supper|tea|breakfast|water|electricity|heating|power|gas|lights?) ~3 (?:at home|in (?:the|my|our) (?:house|fridge|home|flat)|at my house|at our house|(?:{long})|left at|mum|dad|because)|(?:i|we|my \\S+) ~1 (?:havent|didnt|not|never|dont|havent had|hasnt) ~2 (?:eaten|eat|ate|fed|food|had (?:any )?(?:food|dinner|tea|breakfast)|a meal|get (?:any )?(?:food|dinner|tea|breakfast)) ~3 (?:{long}|anything|at home|because|yesterday)|(?:so |always |really |very )?hungry ~2 (?:every|all the time|always|at night|at home|because|since|for days|that i|and (?:there|mum|dad|nobody))|(?:i|we) ~1 (?:steal|stole|take|took|beg) ~1 (?:food|bread|lunch)|(?:nobody|mum|dad|they|he|she|nobody at home) ~2 (?:feeds|feed|cooks|makes (?:me|us)|gives (?:me|us)|buys|forgets to feed|wont feed) ~2 (?:food|us|me|dinner|anything)|eat ~3 (?:bin|bins|rubbish|dog food|cat food)`,
    'theres no food at home since friday',
    'nell had no food in the tower',
    '',
    '(?:it|he|she|they|wolf|fox|people|family|soldiers|children|who) (?:had|has|have|got|ran|were|was|did|went) ~2 (?:no|not|any|out of|without|nothing|eaten|never) ~1 (?:food|bread|water|dinner|eaten|eat|for)|(?:he|she|it|they|wolf|fox|nell) (?:hasnt|havent|hadnt|didnt|had not|has not|have not) ~1 (?:eaten|eat)',
  ],
  [
    'left alone',
    `(?:mum|dad|parents|they|she|he|nobody|everyone|{family}) ~2 (?:hasnt|havent|didnt|never|not|isnt|wont|gone|left|goes|leaves|went|is away|are away|been gone|away) ~2 (?:come|came|coming|been|home|back|away|out|us|me|here|gone|wake|woken|get up|got up|moving|waking|answer|wake up)(?: ~2 (?:home|back|up|alone))? ~1 (?:{long}|up|yesterday|and i|and we|i am scared|what do i do|$)|(?:i am|i have been|ive been|we are|im|i was|me and my \\S+ are|left me|leaves me|leave me|left us|leaves us) ~1 (?:alone|all alone|by myself|on my own|home alone|left alone|by ourselves|on our own) ~2 (?:at home|in the house|all|since|for|every|at night|again|with (?:the|my) baby|until|and)|(?:i|we) (?:have to )?(?:look after|feed|care for|watch|raise) ~4 (?:alone|by myself|because (?:mum|dad|she|nobody)|every|all night|all day|on my own|instead of school)|(?:mum|dad|stepdad|gran|grandad|she|he|brother|sister) (?:wont|dont|doesnt|isnt|not|hasnt|cant) ~1 (?:wake up|waking up|wake|moving|breathing|move|breathe|get up|got up|woken up)|nobody (?:is |was |has been |at )?(?:home|here|looks after (?:me|us)|takes care of (?:me|us)|washes|washed|picks me up|picked me up|cares for|checks on) ~4 (?:{long}|my|me|us)`,
    'dad wont wake up',
    'my dad went out and came back with pizza',
    '.*(?:went next door|like always|with pizza|pancakes|with my aunt|aunt|so my|to work|at work|shopping).*|(?:he|she|they|it) .*',
    'next door|biscuits|pancakes|aunt made|babysitter came|lol|haha|once|for a bit|fun|minutes',
  ],
  [
    'nowhere to sleep',
    '(?:i|we|me and \\S+|us|have to|had to|made me|makes me|let me) ~2 (?:sleep|sleeping|slept|live|living|lived|stay|stayed|staying) ~1 (?:in (?:the|a|our|my|mums|dads) (?:car|van|shed|garage|bus|station|street|bus shelter|bathtub|bath|cupboard|park|tent|cellar|kitchen floor|hallway|toilet|woods|doorway)|outside|on the (?:floor|street|streets|stairs|road|pavement|bench|doorstep|landing)|at the (?:bus|train) (?:station|stop)|rough|under a bridge) ~2 (?:now|since|because|last|every|all|and|for|there|tonight|when|again|dont|$|\\/)|(?:no|dont have (?:a|any)|havent got (?:a|any)|not enough|without (?:a )?|got no) (?:bed|beds|blanket|blankets|home|house|heating|coat|shoes|bed left|beds left)|(?:not allowed|locked|lock|locks|shut|shuts|kicked|threw|throws|throw|wont let me|made me (?:stay|sleep|stand)|makes me (?:stay|sleep|stand)|leave me|leaves me) ~2 (?:inside|in the house|indoors|out|in my room|in the (?:cupboard|cellar|shed|garage|dark|bathroom|closet|basement)|outside|to eat|to drink|to use the toilet|in at night|to sleep|to come in|back in|in until|till dark)',
    'we sleep in the car now',
    'the fox slept in the shed',
    '',
    'camping|sleepover|holiday|tent|caravan|lol|haha|(?:he|she|they|it|who|the \\S+|boy|girl|children|fox|§) (?:had|has|have|got|with|was|were|is|are|slept|sleeps|lived|lives) ~2 (?:no|not|without|in|on|outside|out|kicked|locked|at|bed)|(?:no|without a|got no) (?:coat|shoes)',
  ],
  [
    'nobody cares for me',
    '(?:nobody|(?:mum|dad|they|she|he|parents) (?:never|dont|wont|didnt|hasnt|havent|doesnt)) ~2 (?:wash|washes|washed|take|takes|buys?|buy|clean|cleans|care|cares) ~2 (?:my clothes|me to (?:the|a) (?:doctor|dentist|hospital)|me to anyone|me to see|my (?:uniform|bed)|about me|for me|if i (?:live|die|eat|come|am hurt))|(?:tooth|teeth|ear|arm|leg|stomach|tummy|head|eye|cut|foot) ~2 (?:hurt|hurts|aches?|bleeding|broken|infected|swollen) ~8 (?:wont|nobody|dont (?:care|take)|not allowed|cant (?:go|see)|no (?:doctor|dentist)|they say)|(?:same|dirty|wet|smelly) (?:clothes|nappy|uniform|pants|sheets|bed) ~3 (?:every|for (?:weeks|days|a week)|weeks|since|because)|(?:havent|hasnt|dont|not|never) ~2 (?:washed|had a (?:bath|wash|shower)|clean clothes) ~2 (?:weeks|days|since|month|because)|too cold to sleep|(?:house|home|flat|bedroom|room) is ~2 (?:freezing|full of (?:rubbish|rats|mice|mould|poo)|so dirty|disgusting|unsafe)|(?:mum|dad|they|she|he) ~1 (?:dont|doesnt|never|didnt) (?:love|want|care about|feed|wash|like) me(?: anymore)?',
    'nobody has washed my clothes in weeks',
    'dad washed my clothes today',
  ],

  [
    'asks for pictures',
    '(?:asks?|asked|asking|want|wants|wanted|told|tells|makes?|made|said|says|keeps|send|sends|sent|sending|take|takes|took|need|needs|demand|demands|share|shares|collects?|likes?|begs?|give|gives|trade|pay|pays|paid|has|have|got) ~5 (?:picture|pictures|photo|photos|video|videos|nude|nudes|naked|camera|webcam|cam|livestream|video call|videocall) ~3 (?:of me|of my(?:self)?|of us|in my|without|with no|off|on|private|privately|in the bath|in bed|in (?:my )?(?:pants|swimsuit|underwear|pyjamas|bikini|room)|he|she|they|from me|secret|body|or (?:he|she|else)|for (?:money|coins|him|her)|and not|to (?:him|her|them)|$|\\/)|(?:turn|turned|turning|switch|put|keep) ~2 (?:my )?(?:camera|webcam|cam) ~1 on|private (?:picture|pictures|photo|photos|video|videos|snaps?|pics?)|(?:pictures?|photos?|videos?) of (?:me|my body|my self|myself) ~3 (?:to|he|she|for|without|in|private|secret|naked|online|and)|(?:he|she|they|man|someone) ~2 (?:wants?|asked|asks|asking|needs|sent|sends|keeps) ~3 (?:pictures?|photos?|videos?)',
    'he wants private pictures of me',
    'can we see a picture of the fox',
    '(?:we|i|you|text|book|story) .*|.*(?:of the|of a|of an|of it|in the (?:book|text|story)).*',
  ],
  [
    'asked to keep a secret',
    '(?:our|a|little|big|special|keep|keeping) (?:little |special |big )?secret ~7 (?:mustnt|must not|dont|cant|not|never|tell|anyone|mum|dad|parents|between|alone|grown up|he|she|they|on our own|him|her|teacher|or else|from my|from (?:mum|dad|everyone))|(?:dont|not|never|mustnt|cant|wont|shouldnt|or else|said not|told not|not allowed|promise not|promised not|have not|better not) ~2 (?:to )?tell ~1 (?:anyone|nobody|anybody|mum|dad|my (?:mum|dad|parents|family|teacher)|the teacher|grown up|the grown up|parents|a grown up|teacher|them|someone|people)|(?:said|says|told|tells|made|makes|asked|asks|want|wants) ~1 (?:me|us|i) ~4 (?:secret|not (?:to )?tell|never tell|dont tell|keep quiet|keep it quiet|between us|delete (?:the|my|our|it)|hide it)|(?:said|says) ~3 (?:our secret|between us|dont tell|not to tell)|{start}(?:i )?(?:have|am|know|has) ~2 secret ~4 (?:bad|scared|hurts?|adult|grown up|not allowed to tell|cant tell|told me not)|(?:dont|didnt|doesnt) know ~3 (?:about it|that i|about him|about her|i have|he gave|i talk|i am talking)',
    'he says it is our secret and i mustnt tell',
    'the fox says it is a secret',
    '.*(?:party|present|surprise|ending|spoil|for her birthday|password|what happens).*|.*(?:wren|finch) tell.*|(?:dont|never) tell (?:them|people|anyone|nobody|me)(?: ~5 \\S+)?',
    'birthday|present|surprise|party|lol|haha|ending|secret about|password|in the (?:story|text|book)',
  ],
  [
    'an adult too close',
    '(?:special (?:friend|friendship|relationship|girl|boy|games?|cuddles?|hugs?|love)|nobody would understand|mature for my age|loves me ~2 (?:more|and|secret|like a)|(?:boyfriend|girlfriend) ~3 (?:is|who is|hes|shes) ~1 (?:\\d\\d|twenty|thirty|grown|old|an adult|a man))|(?:{adult}|he|she|friend|friend on \\S+|friend online|someone online|someone|man|person|they|player|guy|somebody) ~7 (?:wants|want|asked|asks|keeps asking|told|tells|said|says|trying|offered|invited|invites|is going) ~3 (?:meet|see|visit|pick|come|get in|sit on|go to|be alone|kiss|cuddle|hug|touch|marry|date|undress|know where i live|where i live|my address|how old i am|what i am wearing|what i look like|where i go|if i am alone|my number|call me|video) ~2 (?:me|him|her|us|alone|up|secretly|own|his|i|car|house|over|$|\\/)|meet ~2 (?:me |him |her |us )?(?:alone|on (?:my|his|her) own|in secret|secretly|by myself|without (?:mum|dad|my|telling|anyone)|in person|in real life|irl)|(?:in|into|get in|got in) (?:his|her|a strangers?|the mans) (?:car|van|house|flat)|(?:gave|gives|give|buys?|bought|buying|sends?|sent|offered|offers|pays?|paid|promised|promises) (?:me|us) ~6 (?:secret|dont tell|not tell|dont know|doesnt know|if i|so i|mum dont|nobody knows|keep quiet|hide it|hidden|to come in|to sit|to kiss|for a (?:kiss|cuddle|hug|photo|picture))|(?:from|on|in) (?:the )?(?:internet|online|game|chat|app) ~4 (?:meet|pick|picks|come|coming|visit|secret|old|older|grown|man|adult|pictures?|photos?|address|where i live)|(?:sounded|looks|looked|sounds|turned out|really|actually|found out) ~3 (?:grown up|adult|old|older|man|grown man|much older|old man) ~4 (?:game|online|chat|phone|pictures?|photos?|said|she said|he said|and)',
    'my friend on the game is 34 and wants to meet me alone',
    'she wants to meet the king',
    '(?:we|you|fox|king|queen|captain|mr|mrs) .*|(?:he|she|they|man|person) (?:told|tells|said|says|wants|asked|asks|invited) (?:him|her|them|the|to) .*',
    'in the (?:story|text|book)|king|queen|prince|princess|wizard',
  ],

  [
    'threatens to hurt',
    '(?:i|we|i will|we will|my (?:brother|dad|cousin|mates?|friends?)|they|he|she|somebody|someone) ~1 (?:am going to|are going to|is going to|will|going to|want to|wants to|would|could|swear i will|promise i will|might|plan to|planning to|am|gonna|should) ~2 (?:kill|murder|stab|shoot|hurt|burn|bash|smash|batter|punch|beat up|beat|hit|slap|break|strangle|choke|drown|poison|knife|destroy|end|hunt|find and|slit|cut|knock|attack|kick|jump|blow up|set fire to|bring|finish|get) ~3 (?:{you}|{your} \\S+|someone|somebody|everyone|everybody|all of (?:you|them)|my (?:teacher|tutor|mum|dad|sister|brother|stepdad|class|classmate|neighbour|friend|dog|cat)|the (?:teacher|tutor|whole class|class|school|head|others|dog|cat)|school|people|them all|him|her|kids|a knife|a gun|my dads (?:gun|knife))',
    'i will kill you Wren',
    'i think the wolf will kill the lamb',
    '(?:they|he|she|someone|somebody) ~1 (?:will|might|could|would|is going to|are going to|want to|wants to|going to) ~1 (?:get|find and|bring|beat|hit|end|finish|jump|hurt|kill|kick|burn|cut|shoot|break|destroy|poison|attack|drown|knock|smash|stab|punch) ~3 (?:him|her|someone|everyone|people)|.*(?:get you (?:the|a|some|one|your)|at (?:chess|football|tag|cards|the game|fifa)|beat you (?:to|at|in)).*|(?:they|he|she) .*(?:him|her|them all|everyone|people|someone|the (?:school|dog|cat|others|class))|(?:my (?:mum|dad|sister|brother)) .*',
    '(?:mum|dad|sister|brother|gran|teacher) ~2 (?:will|going to) ~1 (?:kill|murder) me',
  ],
  [
    'a threat',
    '(?:kill|hang|hurt|cut) (?:yourself|urself|ur self|your self)|kys|(?:go|just|please|why dont you|you should|should|could you|hurry up and|pls) (?:and )?(?:die|kill yourself|jump off|drink bleach|rot in)|(?:hope|wish|wishing) ~1 {you} ~2 (?:die|dies|dead|died|get (?:hit|killed|hurt|run over|cancer|ill|stabbed)|choke|drown|burn|were dead|was dead|never wake)|(?:drop dead|you should be dead|better off dead|you are dead(?: meat)?|you deserve to die|world ~3 without you|nobody would ~2 if you (?:died|were dead))|(?:you are|ur|your|§ is) (?:dead|dead meat|a dead (?:man|girl|boy|kid)|finished|next)(?: (?:{now}))?|(?:watch|mind) (?:your|ur) back(?! (?:door|yard|garden|gate|foot))|waiting (?:for (?:you|§)|at|outside|by) ~4 (?:gate|school|corner|knife|stick|sticks|bat|you|§|after|with)|i (?:know|found out|found) where (?:you|§) (?:live|lives|sleep|go)|(?:bring|bringing|brought|got|have|take|taking|hiding|hid|carry|carrying) ~2 (?:knife|knives|gun|blade|weapon|bomb|machete|hammer|bat|sticks?|matches|petrol) ~2 (?:to school|in my bag|with me|tomorrow|for (?:you|§|him|her|them)|into school|at school|on monday)|(?:bomb|shoot|burn|blow) ~1 (?:up |down )?(?:the |this |our |my )?(?:school|class|classroom|house down|place)|(?:something|someone|bad|people) ~4 (?:happens?|happen|going to happen|die|dies|get hurt|hurt|shot|stabbed) ~1 (?:at school|in school|at (?:break|lunch)|tomorrow|on (?:monday|friday)|to (?:you|§))|(?:dont|not|nobody) (?:come|go|be) (?:to|at|in) (?:school|class) (?:tomorrow|on|next)|(?:school|tomorrow|break|monday|friday|playground) ~4 dont come',
    'watch your back Wren',
    'the guard will watch your back door',
    '(?:you|your|ur) are (?:next|finished)|(?:your|ur) (?:next|finished)|(?:the|a) .*',
  ],
  [
    'is threatened',
    '(?:he|she|they|someone|somebody|{adult}|{family}|{kids}|boy|girl|§|a \\S+ boy) ~2 (?:said|says|told me|tells me|threatened|threatens|wants|want|is going|are going|going|will|swore|keeps saying|texted|say) ~4 (?:kill|hurt|stab|beat|hit|shoot|burn|get|find|find me|punish|batter|murder|hunt|jump|smash|slap|throw|lock|take|post|share|show) ~1 (?:me|us|my (?:mum|dog|cat|family|sister|brother|head|face)|me up)|(?:if i|or) ~1 (?:tell|told|say|said|dont|stop) ~6 (?:hurt|kill|hit|beat|trouble|worse|police|take (?:me|us|my)|angry|post|send|leave)|(?:kick|kicks|hit|hits|beat|beats|push|pushes|punch|punches|spit|spits|trip|trips|steal|steals|take|takes|bully|bullies|bullying|bullied|pick on|picks on|wait for|follow|follows) ~1 (?:me|my (?:money|lunch|bag|stuff)) ~2 (?:every|all|each|always|at break|after school|again|and nobody|nobody)|(?:i am|im|i get|being|i got|get) (?:being )?bullied',
    'he said he will hurt me if i tell',
    'the troll will hurt the goat',
    '(?:mum|dad|sister|brother|gran|teacher|she|he) ~3 (?:will|going to) ~1 (?:kill|murder|get) me(?: up)?|.*(?:lol|haha|get me (?:a|an|the|some|one)|take me (?:to|out|on|swimming|home)|take us|show me|show us|throw me (?:a|the)|find me|get me|get us|share).*',
    'lol|haha|late|homework|muddy|her book|his book|joking|in the (?:story|text|book)',
  ],

  [
    'running away',
    '(?:i|we|me and §|i am|we are|§ and i|me and my \\S+|im|me and \\S+) ~3 (?:run away|running away|ran away|runaway|leave home|leaving home|left home|run off|running off|sneak out|sneaking out|climb out|climbing out|leaving town|leave town|escape from home|get away from (?:here|home|him|her|them)|live in the (?:woods|forest|street|streets|park)|live on the (?:street|streets)|live outside|hide in the woods)|(?:packed|pack|packing|got|have) ~1 (?:my|a) (?:bag|bags|things|stuff|rucksack|backpack) ~5 (?:leave|leaving|go|going|run|away|tonight|never|bus|train|window|dont)|(?:never|not|wont|cant|wont be) ~1 (?:going|go|coming|come|be) (?:back )?(?:home|back|back home) ~2 (?:tonight|ever|because|again|he|she|dad|mum|i|tell|they|anymore|to (?:him|her|them))|(?:never|not) (?:going|go|coming) (?:back )?home|(?:slept|sleep|sleeping|spent|stayed|hid|hide|hiding) ~2 (?:at the (?:bus|train) (?:station|stop)|in the (?:park|woods|bus stop|bus shelter|station|shed|playground)|outside|on the street|on a bench) ~1 (?:last night|all night|tonight|the night|because|dont|again|so)|(?:tonight|tomorrow|when everyone sleeps|when they sleep|when mum sleeps|when they are asleep|after dark) ~4 (?:i|we) ~3 (?:climb|go|leave|run|sneak|escape|get out|walk out|am gone|are gone)|(?:i|we) ~2 (?:leave|leaving|go|going|gone|run|escape|sneak|climb|walk) ~4 (?:tonight|when (?:everyone|they|mum|dad) ~2 (?:sleep|sleeps|asleep)|at midnight|in the night|before they wake|and never come back|for good|and nobody (?:will|knows)|dont tell)',
    'i am going to run away tonight',
    'i ran away from a goose at the pond',
    '(?:i|we|me and \\S+) ~3 (?:ran|run|running) away ~1 (?:from )?(?:a|the|an|my|because)(?: ~2 (?:goose|dog|wasp|bee|spider|cow|sheep|cat|sister|brother|baby|ball))?|(?:if|when) i .*|.*(?:if i (?:was|were)).*',
    'if i (?:was|were|had been|lived)|beach|haha|lol|so fun|too good|in the (?:story|text|book)|goose|predict|think (?:they|he|she|the)',
  ],
  [
    'hurts an animal or starts fires',
    '(?:i|we) ~2 (?:want to|like to|going to|will|am going to|love to) ~2 (?:torture|kill|hurt|burn|drown) ~2 (?:cat|cats|dog|dogs|animal|animals|rabbit|hamster|baby)|set ~2 on fire ~2 (?:house|school|him|her|them|cat|dog)',
    'i like to hurt cats',
    'i like cats',
  ],
]);
