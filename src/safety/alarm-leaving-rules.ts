import { alarmRulesOf } from './alarm-rule.js';

const harmless =
  'FUN; LOL; GAME; ANIMAL; volcano; cabbage|broccoli|vegetables; ^_HE|it|he_ran; if_i_was|were; if_a|if_the; once; when_i_was; I_would; would';

/** Words that may mean that a child wants to run away or dreads its home, is bullied, or calls for help. */
export const leavingRules = alarmRulesOf([
  {
    name: 'running away',
    when:
      'I|we|me_and|ima RUN; I WANT RUN; I|we|me_and|mum_and_i ' +
      'run|ran|running|leave|leaving|left|leaving|left|get|getting|ran_off ' +
      'away|home|for_good|forever|town|house ' +
      'tonight|tomorrow|TIME|and|because|last|to|from|now|with|i|never|$|forever; ' +
      'tonight|TIME|when|sleep|asleep|midnight .. i|I|we|ill ' +
      'go|leave|climb|sneak|run|am_gone|will_go|be_gone|get_out|am_leaving; I|we|me_and|sister ' +
      'go|leave|climb|leaving|going|sneak|walk|live .. tonight|when .. ' +
      'asleep|sleep|tent|nobody|note|woods|never|bag; packed|packing|pack|have my|a|our ' +
      'bag|bags|things|rucksack|backpack|stuff|clothes|suitcase .. ' +
      'leave|leaving|go|going|run|tonight|not|never|train|bus|too|away|ready; rucksack|bag .. packed ' +
      '.. tonight|too|go|ready|away; I|am|are never|not|wont|no coming|come|going|go|be back ' +
      'home|again|$|and|never|ever|here|there|to; not|never going|coming|go|come back|home; ' +
      'climb|get|sneak|crawl out .. never|back|night|tonight|window|asleep; live|sleep|stay in|on|at ' +
      'the|a woods|forest|street|streets|beach|tent|cave|station .. ' +
      'nobody|alone|tomorrow|from|because|never|away|note|shouts|not; I|we ' +
      'am|are|was|been|slept|at|in|on at|outside|in|the ' +
      'station|park|street|bus_shelter|outside|woods|train .. ' +
      'night|alone|phone|know|left|go|tonight|because|hours; I left|leave home|house|mum|them .. ' +
      'dont|not|never|where|alone|go|night; saved .. train|bus|ticket|run|away|leave|nobody; how ' +
      'far|get|long|do .. bus|train|pounds|walk|window|away|without_noise .. ' +
      'not_going|back|for_me|alone|night|me; i ran_away; going|go to my ' +
      'real_dad|real_mum|friends|aunt .. nobody|tell|knows|secret|alone; I|we leave|leaving|going ' +
      'for_good|forever; dont leave a note; stay|going|go|live with .. instead .. never|nobody|tell; ' +
      'need to know .. for_me; i_am|ima|im_gone tonight; not_at_home; i_left .. ' +
      'where|go|know|outside; leaving for_good; not going|go back $; do_it .. when|on .. ' +
      'asleep|sleep; me_and KIN|my go|leave|run tonight; I walked out|off; I|we cant stay ' +
      'there|here|home|at_home|with|another|one_more night|day|minute|anymore; under|in|at the ' +
      'bridge|station|park|bus_station|doorway .. rains|cold|night|sleep|now|i|am; wish|hope|want ' +
      'someone|somebody|sumone would|to|will take me|us away; place|somewhere where|for|to ' +
      'kids|children|i|hide can|sleep|stay|live|go; my|under|left pillow under|in|blanket .. ' +
      'think|there; never|cant find me|us; took|stole|got|have mums|dads|money|card|ticket .. ' +
      'off|train|trains|bus|leave|go|gone; rather live|sleep|be .. with|under|in|on than ' +
      'home|with|them|him|there; hide|stay at|in school till|until|over morning|night|weekend; ' +
      'not|never getting|get on that|the|his bus|car|train .. his|him|back|home|place; ' +
      'tonight|tomorrow|six|midnight .. trains|train|bus|ticket; live on my_own|your_own when|at|if; ' +
      'bye parents|mum|dad; riding|ride the_bus|the_train|around; never set|setting foot; long way ' +
      '.. arrive|home; leaving|leave town|home|tonight .. sleeps|asleep|tell; think about going_in ' +
      '.. not',
    unless:
      `${harmless}; garden; camp; trip; holiday|holidays; wednesday_club; tickets_for; to_the_end; ` +
      'story; to_school; on_friday_i_have; museum; in_the_shade; from_the_lesson; for_the_bus; ' +
      'practice',
    example: 'i am going to run away tonight',
    not: 'i ran away from a goose at the pond',
  },
  {
    name: 'dreads going home',
    when:
      'dont|not|never|cant|please|no|hate|dread WANT|let|make|send|go|going|have|wanna to|me ' +
      'go|be|going|come|home|back home|back|there|to_dads|to_mums|to_my_dads; cant_go home|back; ' +
      'cant_come home|back; I cant|dont|wont go home|there|back; not|dont|never|isnt|unsafe ' +
      'feel|safe safe|at_home; FEAR|afraid to|of go|going|be home; FEAR go|going|come home|back; ' +
      'dont|not want|like to_go|to_be|going|being home|at_home|back; stay|sleep|live ' +
      'here|after|at_school|with_you|longer|in_class .. home|back|go|dont|not; walk|stay|hang|wait ' +
      '.. dark|late|till|until .. home|house|go|in|dont; please dont|not send|make|call|ring ' +
      'me|my|mum|home|him; if|when i go|come|get|am home .. ' +
      'there|HE|HARM|he|hit|shout|belt|worse|scared|trouble|dad|hurt; cant_be at_home|home|there; ' +
      'hate|dread going home|weekends|fridays|holidays|home; i_beg; HE|ELDER sees|finds|reads|hears ' +
      'report|my|marks|grades|out .. dead|kill|HARM|belt|hit|hurt|worse; when sees .. ' +
      'report|grade|marks .. dead|HARM|kill; judge|court says|makes .. must|dads|go|him|there',
    unless:
      `${harmless}; yet; so|too|good|hot|cold|fun; homework; train; tired|practice; dinner; party; ` +
      'wait_for_me|at_the_gate; soldiers; ^_they; beach|pool|park_is',
    example: 'im scared to go home because of my report',
    not: 'i dont want to go home yet the party is so fun',
  },
  {
    name: 'is bullied',
    when:
      'KIDS|they|he|she|§|everyone|someone ' +
      'HARM|ROUGH|take|takes|steal|steals|follow|follows|wait|waits|chase|film|filmed|hold|burn|' +
      'burns|kick|call|calls|make|makes|laugh|laughs|hurt ME|me|my|us .. ' +
      'HABIT|every|all|after|again|day|break|or|outside|toilets|scared|down|nobody|if|at|in|' +
      'everyday|until|with|names; KIDS|they ROUGH|push|hold|held|pushed|put my|me|us ' +
      'head|in|down|into|under .. toilet|water|HABIT|mud|bin|nettles|thorns|floor|day|wall; ' +
      'I|i|am|im|get|getting|being|got bullied|beaten_up|picked_on|bullying; bully|bullies|bullied ' +
      'me|us; FEAR|afraid|hate|dread to|of|go|come|coming|going ' +
      'school|class|out|outside|bus|playground .. ' +
      'because|they|he|beat|anymore|boys|girls|kids|push|hit|cant; they are|wait|stand|outside|stood ' +
      'outside|at|by|for my|the|me house|gate|again|door; make|makes|made ME|us ' +
      'eat|walk|steal|lick|drink|kiss|kneel|jump|pay|do .. ' +
      'dirt|or|for|toilet|tracks|mud|every|break|they|it|grass|money; everyone|all|whole_class|they ' +
      'hate|hates|laughs|calls|call me .. every|die|kill|disappear|cant|anymore|live; ' +
      'thay|they|boys|girls|gang get|got me|my|us; takes|take|steal|steals|stole my ' +
      'money|lunch|phone .. every|or|if|HABIT|knife|burns|afraid; i|am afraid|scared .. ' +
      'boys|girls|gang|bullies; push my_head; boys HABIT hold|kick|hit; kick|hit|punch|beat|push me ' +
      'every|at_break|each|all; nobody does anything|helps|believes me|$; push|hit|kick me ' +
      'too|also|every; knife to|at me; spit on|at me; girls|boys|kids|they|older ' +
      'burned|burnt|cut|pulled|set|ripped|broke|stole|spat my|me|at|in|on ' +
      'hair|bag|clothes|food|face|glasses|things|mouth; spat|spit in|on|at my|me food|mouth|face; ' +
      'throw|throws|threw|chuck stones|rocks|things|bottles at_me|at_us; tell|tells|told me|i|to ' +
      'jump|die|kill|hang every|when|if|$; they|he|boys|said wait for me by|at|outside|after|behind; ' +
      'leave in|be_in an|a ambulance|hospital; cant sleep because .. wrote|said|post|send|they; ' +
      'vote|voted|page|group|chat .. me|i die|ugly|hate|about; so they|he dont_find|cant_find me; ' +
      'trousers|pants down .. filmed|laughed|everyone; pulled|pull my trousers|pants|skirt down; ' +
      'lock|locked me in_the_equipment|in_the_toilet|in_the_cupboard|in_the_changing; pay|give ' +
      'them|him money|pounds|every .. leave|alone|day|week|or; message|messages|text die|kill',
    unless:
      'GAME; LOL; CARE; ^_they|he|she .. him|her|them|anselm; tag; snowball; said_sorry; STORY; ' +
      'sorted; queue; for_a|the_answer; ball; like_that; coat_of; presents|seat; cousins',
    example: 'the boys kick me every break and nobody does anything',
    not: 'the boys kick the ball every break',
  },
  {
    name: 'calls for help',
    when:
      '^_help_me; help_me $|please|now|he|im|i|not|hes|someone|they|get|am; ' +
      'please|someone|somebody|anyone|can help_me $|please|he|im|i|not|am|she|hes|right; i need help ' +
      '.. home|not|dad|bad|safe|now|hurt|scared|dont|mum|him|real|police; call|ring|phone|get the ' +
      'police|999|911|112|ambulance|childline|police; number .. kids|children|call|help|child|abuse; ' +
      'tell|talk .. somebody|someone|anyone|teacher|adult|alone .. ' +
      'something|not_allowed|stepdad|dad|mum|home|hurt|scared|happening|happened|uncle|about_my|' +
      'about_home|private; tell|talk you|u|miss .. bad|hurt|home|private|alone|happening|stepdad; ' +
      'how|who do|can|should|could i|u|you|a_child tell|talk .. ' +
      'hurt|hurts|scared|home|dad|afraid|hit|touch|him|happening|parents; is|it ' +
      'normal|ok|allowed|okay|wrong|legal|bad if|that|when|for|to|an|a|your .. ' +
      'dad|mum|father|uncle|hits|hit|adult|hurt|see_you|stepdad|TOUCH|sleeps|parents|locks|stays|' +
      'alone|HARM|PRIVATE|meet|secret|man|shower|send|somebody|normal; is that ' +
      'normal|allowed|ok|right $; what|who|how can|do|should|could a_child|you|i|kids do|call .. ' +
      'afraid|hurt|HARM|father|dad|locks|family|touch|hits|home; something ' +
      'happened|happens|is_happening to_me|at_home|to_us|and; not|dont|isnt|unsafe ' +
      'safe|feel_safe|i_am_not_safe; i am not safe; does|do bad|something|weird|horrible ' +
      'stuff|things|to_me|to_us; please what do|should i_do; help .. ' +
      'home|hurting|safe|mum|dad|police; i_am_in|in danger|trouble|hiding .. help|please|home|he; ' +
      'need|want a|an|to grown_up|adult|tell_someone; who|how do|can|should i tell|say|talk .. ' +
      'if|teacher|about|happens|secret|bad; whats|what_is|is_there a|child ' +
      'protection|helpline|childline|abuse|social_worker; know|knows if ' +
      'someone|somebody|an_adult|your_dad is|are abusing|hurting|touching; happened|happend|happens ' +
      'again last|to_me|at_home|tonight|yesterday|$; it_was|it_is|is|was|got ' +
      'bad|worse|horrible|terrible at_home|this_weekend|since_mum|since_dad|since|again_last; ' +
      'something|somthing is|are wrong|rong|bad at|in|with home|my_family|my_house|me; i scared .. ' +
      'nobody_is_here|nobody_is_home|alone|noone; hes|he_is ' +
      'here|outside|coming|at_the_door|back|found $; he_found_me; HE found me; cant|not talk|say ' +
      'about|it .. bad|but|out_loud; if a_kid|a_child|someone|i told you|u|miss .. ' +
      'bad|would|tell|hurt; does|would school|teacher|you tell|have_to parents|mum|dad; what_happens ' +
      'to|if .. child|kid|dad|mum .. prison|told|tells|taken; decide|choose|allowed not_to|to ' +
      'live|stay|see with|dad|mum .. hurts|hits|scared|dad; bleeding alot|a_lot|so_much; did ' +
      'something stupid|bad .. bleeding|hurt|pills|help; keep me here|safe; my hands shaking; can ' +
      'this be private; somebody|anybody|anyone awake|there|here .. bleeding|scared|help|stupid; ' +
      'wish .. take|took me away; helps me forget; took|take|has the_baby .. screaming|gone|off; ' +
      'is_my_dad|is_it_my_dad_allowed',
    unless:
      'BOOKWORK; with_this; with_my; with_the; understand|find|spell|read|understood; LOL; GAME; ' +
      'STORY; ^_would; should_call; he_should|she|they; if_he|she|they; said; ' +
      'tell_us|about_the|about_a; card; sum-up; is_it_true|food|live_without; wolf|king; ANIMAL; ' +
      'skip|go_to_the_toilet|sit|read|borrow|leave_early; telephones|operators',
    example: 'please help me he is outside my room',
    not: 'can someone help me with this word',
  },
]);
