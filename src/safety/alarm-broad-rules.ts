import { rulesOf, type Rule } from './rule.js';

const own =
  'i|me|my|mine|myself|us|we|our|i am|i have|§|friend|friends|friends|cousin|sister|brother|mum|dad|mums|dads';
const story =
  'in the (?:story|text|book|poem|passage|game|film|movie)|lol|haha|hahaha|joking|pretend|playing|spiders?|the dark|dentist|homework|test|exam|quiz|football|netball|rugby|match|boss|level|minecart|birthday|surprise|laughing|laughter|of boredom';

/**
 * Broad signs, for what no set phrase foresees: a word of danger together with the child's own people. They are meant to
 * call a person too often rather than too seldom; words that the passage has are left out. The list is this project's own.
 */
export const broadRules: readonly Rule[] = rulesOf('alarm', [
  [
    'a word of danger near oneself',
    `hands? ~1 (?:round|around|on|over) ~1 my (?:neck|throat|mouth|face|leg|legs)|(?:i am|am|all|was|is) ~1 black and blue|(?:cut|burned|burnt|burn|hurt|scratched|hit|broke|crashed|fell) ~4 on purpose|(?:think|thinking|thought) (?:of|about) jumping|my life ~2 (?:pointless|worthless|over|hell|ruined|meaningless|nothing)|dont (?:think|know if|know how) ~2 (?:can|to) (?:go on|keep going|carry on|cope)|(?:note|letter|card|message) ~3 (?:to say )?goodbye|(?:broke|breaking|breaks) in(?:to)? ~2 (?:our|my|and)|(?:never|not) coming back ~1 (?:home)?|(?:mum|dad|they|parents|gran) ~1 (?:left|went|gone) ~4 (?:days|weeks|nights|hours) ago|(?:he|she|they|man|someone) ~2 (?:wants to know|asks?|asked|keeps asking) ~4 (?:pants|underwear|knickers|bra|body|wearing|naked)|(?:lock|locks|locked) ~2 (?:fridge|food|kitchen|larder) ~2 (?:so|from me|and i|because|$|\\/)|(?:my|our) (?:nan|gran|mum|dad|aunt|uncle|stepdad|stepmum) (?:locks|locked)|(?:dont|wont|doesnt|didnt|never) let (?:me|us) (?:eat|sleep|drink|out|go outside|go to school|see (?:my|anyone)|leave)|(?:bring|bringing|brought) ~2 (?:bat|brothers|knife|gun|stick|mates to)|(?:if i (?:die|died|was dead|were dead|am dead|killed|disappeared|was gone|wasnt here)|when i (?:die|am dead|am gone)|never (?:been |be |was )?born|(?:wasnt|werent|not) born|(?:i|we) cant (?:live (?:like|with|here|without|anymore|at)|breathe (?:because|when|and he|at home))|(?:i wish|i wished|wish i|wish that i) ~2 (?:was|were|could|would) ~1 (?:dead|gone|asleep|sleep forever|fall asleep|not|never|nobody|invisible|someone else|somebody else|a different|anywhere but|die|disappear|vanish|stay asleep|alive)|(?:my|her|his) (?:arm|arms|wrist|wrists|leg|legs|thigh|thighs|skin|body|back) ~3 (?:cuts|scars|bruises|bruised|scratches|burns|marks|sliced|bleeding|covered)|(?:cuts|scars|burns|bruises) ~1 (?:on|all over|up|down|along) ~1 (?:my|her|his|§s|their) (?:arm|arms|wrist|wrists|leg|legs|thigh|back|body|skin|neck|tummy)|too many (?:pills|tablets|painkillers)|(?:how|what happens if) ~3 (?:die|kill (?:my|your) ?self|hang|take ~2 (?:pills|tablets)|drink bleach|stop breathing)|(?:hate|hates|hated) (?:my life|myself|my body|living|being me|being alive)|(?:i|we) (?:want|need|have|got) ~1 to (?:tell|talk to) (?:someone|somebody|anyone|a grown up|an adult|the police)|can i tell (?:you|someone|somebody) (?:something|a secret|about)|i need help ~6 (?:not|home|about (?:me|my)|dad|mum|real)|{start}(?:please )?help me(?: please)?{end}|(?:cut|cuts|cutting) (?:because|when i am|when i feel|helps|makes me feel))`,
    'if i died would anyone notice',
    'the fish died in the net',
    '',
    story,
  ],
  [
    'own people frighten',
    `(?:(?:{own}) ~3 )?(?:scared|afraid|frightened|terrified|hide|hides|hid|hiding|cry|cries|crying|cant sleep|shaking|worried|nervous) ~3 (?:when|because|that|if|of|until|from|about|what) ~2 (?:{parent}|{family}|he|she|mums boyfriend|they|uncle|him|the man|my \\S+) ~2 (?:drink|drinks|drunk|drinking|shouts?|shouting|screams?|hits?|comes (?:home|in|back)|gets (?:angry|mad|drunk)|is (?:angry|mad|drunk|home|there|here|around)|fights?|fighting|hurts?|finds?|breaks|starts|will|does|looks|yells?)|(?:{family}|mums|dads) ~2 (?:shouts?|shouting|screams?|screaming|yells?|yelling|swears?) ~1 (?:at|to) ~1 (?:me|us|mum|my mum|everyone) ~3 (?:every|all|always|and|because|i|until|so|again|at night)|(?:{family}|he|she|they) ~1 (?:says?|said|tells? me|told me|wishes|wished|thinks?) ~3 (?:i was never born|hates? me|i am (?:a mistake|worthless|useless|nothing|not wanted|stupid|disgusting)|kill me|dont love me|didnt want me|send me away|get rid of me|never born|wish i)|(?:holds?|held|holding|pins?|pinned|sits|pressed|pushes|pushed) ~1 (?:me|my (?:head|face|mouth|arms?)) ~2 (?:down|under|against|breathe|wall|floor|pillow)|cant breathe`.replaceAll(
      '{own}',
      own,
    ),
    'i am scared when my stepdad drinks',
    'he is scared of the wolf',
    '(?:he|she|they|the \\S+) .*',
    `${story}|(?:he|she|they|the \\S+|boy|girl|mouse|fox|it) ~1 (?:is|was|were|are|got|gets|must be) ~1 (?:scared|afraid|frightened|crying|hiding|worried)|(?:boy|girl|child|children|duck|fox|wolf|they|he|she) (?:hides?|hid|cries|cried|cry)`,
  ],
  [
    'violence said to happen',
    '(?:{family}|mums|dads|he|she|they|boy|someone|{adult}) ~2 (?:punched|punches|kicked|kicks|hit|hits|smashed|smashes|broke|breaks|threw|throws) ~2 (?:wall|door|window|plate|plates|cup|bottle|chair|tv|phone|glass) ~2 (?:at me|at us|at mum|next to|near my|in my|because i|when i|again|every|and then hit)|(?:threw|throws|throw|chucked|chucks) ~3 (?:at me|at us|at mum|at my)|(?:said|says|told me|threatened|threatens|going to|will) ~3 (?:break|cut off|smash|burn|snap|rip|slit|chop) ~1 (?:my|our) (?:legs?|arms?|face|neck|bones?|fingers?|hands?|head|house|door|throat)|(?:hurts?|hurting|hit|hits|touches|beats?) (?:me|us) ~3 (?:nobody|no one|cant see|where|under my|secret|so that|every)|(?:kicked|thrown|threw|kick|chucked) ~1 (?:us|me) out|(?:got|been|were|are|being) ~1 (?:kicked out|evicted|homeless|thrown out)|(?:hostel|refuge|shelter|foster|social worker|care home) ~3 (?:because|again|took|take|since|hit|hurt)',
    'dad punched the wall next to my head',
    'he threw the ball at me in rugby',
    '',
    `${story}|last school|ball|snowball|pillow|paper|sock|frisbee|catch|(?:he|she|they) (?:was|were|got|is|had been) ~1 (?:kicked|thrown) out`,
  ],
  [
    'threats at somebody here',
    '(?:(?:i|we|i am|we are|i will|we will|ill|my brother|my mates|they) ~3 (?:find|smash|punch|break|kick|hurt|stab|kill|batter|bash|beat|slap|burn|cut|get|destroy|end|knock|drown|strangle|hunt|make) ~2 (?:{you}|{your} (?:face|head|teeth|legs?|arms?|house|nose|neck|family|mum|dog|life|fingers)|(?:his|her) (?:face|head|teeth|legs|arms|nose|neck) (?:in|off|open)) ~4 (?:so bad|hurt|kill|in|bad|cry|dead|pay|bleed|up|off|sorry|after|tomorrow|again|and|if|when|down|hard|lights out|open|$|\\/))|(?:you are|you|your|ur|§ is|you will|§) ~1 (?:going to|gonna|will|about to|getting|get|be|will be|will get) ~1 (?:get |be )?(?:stabbed|killed|shot|hurt|beaten|battered|dead|jumped|smashed|buried|burned|burnt|hunted|attacked)|(?:hurt|kill|stab|beat|punch) (?:you|§) (?:so |really |very )?(?:bad|badly|hard|up|in|dead)|(?:you|§) ~1 (?:better |should )?(?:sleep with one eye open|start running|say goodbye|be scared|be afraid|wont wake up|wont live|wont see)',
    'youre gonna get stabbed',
    'i will get you the book',
    '(?:i|we) (?:will |can |am going to )?(?:get|find|make|end) (?:you|§) (?:the|a|an|some|your|one|it|happy|laugh|smile) .*',
    `${story}|quiz|chess|race|game|cards`,
  ],
  [
    'a stranger near somebody',
    '(?:man|men|stranger|guy|older (?:boy|girl|kid)|someone|lady|woman|person|car|van|online friend|friend online|friend from (?:the )?(?:internet|game|chat)|gamer|boy online|he|she) ~5 (?:waits?|waiting|watches|watching|follows?|following|stares?|showed|shows|sent|sends|asks?|asked|wants?|told|tells|offered|keeps?) ~3 (?:me|us|my|outside (?:school|my)|our) ~6 (?:rude|dirty|naked|nude|sexy|pictures?|photos?|videos?|film|address|number|school|outside|alone|secret|delete|hide|home|house|car|van|body|undress|kiss|touch|bed|room|where i|how old|what i)|(?:man|stranger|guy|woman|someone) ~3 (?:waits?|waiting|hanging around|watching) ~2 (?:for me|for us|outside (?:school|my|our))|(?:showed|shows|sent|sends|showing) ~1 (?:me|us|my sister|my brother|my friend) ~2 (?:rude|dirty|naked|nude|private|sex|adult|bad|gross|his|her) ~1 (?:pictures?|photos?|videos?|films?|bits|parts?|body|things|thing)|(?:{own}) ~3 (?:meet|meeting|met|meets|date|dating|talks? to|chats? (?:to|with)|going out with|in love with|seeing) ~2 (?:man|stranger|guy|adult|grown up|grown man|woman|someone|older \\S+|boy) ~2 (?:from (?:the )?(?:internet|game|chat|app)|online|on the internet|she met|he met|from an app|who is (?:\\d+|old|grown|much older))|delete ~2 (?:messages|chats|chat|texts|pictures|photos|history)'.replaceAll(
      '{own}',
      own,
    ),
    'there is a man who waits outside school for me',
    'the man shows the king a map',
    '(?:man|he|she|stranger|woman|someone|lady|person) ~5 (?:my (?:homework|book|dog)|how to|the (?:way|answer|page)) .*',
    `${story}|(?:asked|asks|told|tells|wants) (?:him|her|them|the) |king|queen|fox|wolf|witch|captain|giant|miss|teacher said|mum asked`,
  ],
  [
    'left with too much',
    '(?:i am|im|me and my \\S+|we are|i) ~1 (?:alone|by myself|on my own|home alone) ~2 (?:every|all|most|each) ~1 (?:night|nights|day|evening|weekend|time)|(?:mum|dad|parents|they|nobody|no one) ~2 (?:isnt|arent|is not|not|never|wont be|isnt ever) ~1 (?:here|home|there|around) ~3 (?:and|baby|alone|at night|all|for|since|until|crying|so i)|(?:baby|little) (?:brother|sister) ~5 (?:wont stop crying|crying|hungry|sick|not moving|not breathing|wont wake) ~4 (?:mum|dad|nobody|alone|i dont know|isnt here|not here|gone)|(?:same|dirty) clothes ~4 (?:because|wash|every day)|(?:dont|havent|havent got|not) ~1 (?:have|got|had|been) ~1 (?:any|enough|proper) ~1 (?:food|dinner|clothes|bed|heating|money for food|water)',
    'i am alone every night',
    'the owl is alone every night',
    '(?:he|she|it|owl|they) .*',
    story,
  ],
]);
