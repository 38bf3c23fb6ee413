import { alarmRulesOf } from './alarm-rule.js';

const harmless =
  'GAME_with; football; CARE; LOL; ball; snow; by_accident; ANIMAL HARM|ROUGH|TOUCH; funny; ^_if|would';

/** Words that may mean that somebody hurts the child or its family at home. */
export const hurtRules = alarmRulesOf([
  {
    name: 'somebody hurts me',
    when:
      'ELDER|ADULT|boyfriend|gf|girlfriend HARM ME|my_BODY|if|when|for|WHEN|KIN; HE|who HARM_ME; HE ' +
      'HARM|ROUGH my_BODY; ELDER|HE|boyfriend|SIBLING ROUGH my BODY|me_by; ELDER|boyfriend ROUGH ' +
      'ME|mum|at_me; HE ROUGH ' +
      'me_to|me_against|me_down|me_by|me_around|me_across|my_head|my_hair|my_arm; in_my_FAMILY HARM ' +
      'ME; ELDER|HE|SIBLING gets|takes|took|uses|used|got|has|with|puts|put|bring|grabs TOOL ' +
      'off|when|on|if|out|for|twice|to|and|is|again|$; ELDER|HE|SIBLING|gf ' +
      'put|puts|held|holds|hold|pushed|push|pushes my|me|mine .. ' +
      'water|sink|oven|wall|stove|radiator|breathe|bath|HARM|floor|neck|TOOL|hand|face|pillow|' +
      'toilet; ELDER|HE|SIBLING|gf TOOL on|across|over|at|to my|me|us; I ' +
      'get|got|gets|getting|have|feel .. TOOL across|on|twice|when|again|if|yesterday|when; I ' +
      'get|got|am|been|was|being|getting HARM ' +
      'at_home|every|by_my|by_KIN|after|HABIT|when|with|for|TOOL|from_KIN; I get the_TOOL; ' +
      'makes|make|made ME kneel|stand|drink|hold|sleep|eat|sit|beg|swallow|run .. ' +
      'TOOL|hours|until|outside|snow|cold|floor|rice|soap|worse|dog|night|corner; SIBLING ' +
      'HARM|choke|choked|chokes|burns|burned|hurting me ' +
      'HABIT|until|till|so|nobody|and_mum|and_dad|with|when|because; SIBLING HARM|choke ' +
      'me_HABIT|me_till; ELDER|HE tied|ties|ties_up|tie|tape|taped|gagged ME|my; ELDER|HE|boyfriend ' +
      'by_the BODY; by_the_neck; by_the_throat; by_my_hair; by_her_hair; by_the_hair; lifted_me; ' +
      'i|we have_it_worse; hits|hit so hard|long; HE|KIN HARM so_long|so_hard|so_bad; ' +
      'gave|give|gives me a black_eye|slap|beating|hiding|kicking|something_to; beating|beatings ' +
      'i|me|my|when; ELDER hurts everyone|all|us; father|dad hits so_hard; hurting ME; KIN is HARM ' +
      'ME|mum|him|her; ELDER throws|threw|chucks|smashed ' +
      'things|plates|plate|glass|chair|bottle|pan|cup|everything at|me|when|on|us; ' +
      'stood|stamped|stands|sat|kneels on me|my; i deserve|deserved it|beating|the ' +
      'usually|hit|because|was; I|me got|hit|get with|by a|the TOOL; TOOL .. fell|legs|back from ' +
      'KIN; someone|somebody_is|in HARM me|us; HARM me again|every|HABIT; ELDER|uncle|cousin|SIBLING ' +
      'bites|hits|beats|kicks|punches|slaps $; ELDER|HE|uncle will|going|would|said put|send me|us ' +
      'in|to hospital|ground; ELDER|HE said|says .. drown|kill|break|burn|cut|hurt|beat ' +
      'me|us|my|every; ELDER|HE|uncle does things|stuff|it|bad_stuff|that to_me|to_us|with_me; ' +
      'what HE|ELDER|uncle does|did to_me|to_us|at_night; if .. what HE|ELDER does; from ' +
      'the|a|his|her belt|cable|stick|whip|hanger; cold|hot|icy shower|bath ' +
      'again|hour|until|because; makes|made ME hold .. until|till|hours|pan|books; tied|tie|ties ' +
      'me|us|to|up .. chair|bed|radiator|rope; i was|got|am tied to|up; ELDER calls|called me|us ' +
      'a_mistake|worthless|useless|nothing|stupid every|and|all; so|till|until i|I ' +
      'cant_breathe|go_floppy|bleed|stop_crying|am_sick|im_sick; ELDER|HE|SIBLING sits|sat|sit ' +
      'on_me; hits|kicked|kicks the_dog|our_dog|puppy|my_dog .. me|next|then; ELDER|HE|they ' +
      'poured|pours|pour|put|puts .. on_me|in_my_eyes|over_me|in_my_mouth; eat off the_floor; ' +
      'dads|his|mums hand|fist|fists since|from|hole|holes; door|doors|wall .. fist|kicked_it_in; ' +
      'ELDER|ADULT ROUGH|HARM me|my|us ' +
      'where|under|till|until|when|if|so|every|on|and|by|because|with; ELDER|ADULT|HE ' +
      'held|holds|put|puts mine|my|me|us .. in|under|on the|hot|cold|boiling|water|oven; HE ' +
      'ROUGH|grabbed|shook|threw me really|so|too hard|much; HE grabbed|shook|shakes me .. ' +
      'and|hard|so|again|last_night',
    unless:
      `${harmless}; mum KILL me; ^_HE|it HARM him|her|them; THEIRKIN HARM; shot|took_me_out; ` +
      'hit_me_with_your; my_eyes; feelings; head_hurts|tummy_hurts; gel; mosquito; hit_me_up; ' +
      'once_when; with_a_pillow; sun|water|story|book|wind_HARM; with_the_cushion; ^_you; ' +
      'killing_me; beat_me_by; beat_me_at; beat_me_to; beat_me_in; beat_me_again; beats_me_at; ' +
      'beats_me_in; the_air; horse; toe; in_those_days; best_question',
    example: 'my stepdad hits me when im slow',
    not: 'the ball hit me on the nose',
  },
  {
    name: 'hurts among own people',
    when:
      'ELDER HARM|ROUGH|strangled|choked|KILL mum|dad|gran|SIBLING|baby|LITTLE|her|him|them; ' +
      'ELDER|boyfriend HARM|ROUGH|chokes KIN|my_KIN; HE HARM|ROUGH|choked mum|dad|my_KIN|KIN; ELDER ' +
      'has|had|got mum|dad|KIN by; ELDER .. down the_stairs; parents|mum_and_dad|they ' +
      'fight|hit|beat|hitting|HARM .. police|blood|each_other|hard|knife|every|HABIT; ELDER SHOUT at ' +
      'ME|us|KIN HABIT|night|all|so|until|when; ELDER|HE SHOUT ' +
      'HABIT_night|all_night|every_night|every_day|until|all_the_time|at_night; fight .. ' +
      'police|blood|ambulance|bleeding; police came|come|were|took .. KIN|home|house|ours|again; ' +
      'ELDER|HE broke|breaks|smashes|smashed|kicked|punched|hit the|a|my|our|mums|everything ' +
      'door|wall|window|tv|phone|plates|glass|things; KIN|mum ' +
      'bleeding|blood|hurt|crying|unconscious; ELDER|HE said|says|threatens|threatened|wants|swore ' +
      '.. KILL|hurt me|us|mum|her|KIN|everyone|all; ELDER KILL us|me .. knife|gun|TOOL; ELDER|HE ' +
      'has|holds|got|took|gets WEAPON|knife|gun; marks|bruises on|from_the KIN|little|SIBLING; ' +
      'KIN|LITTLE has|with MARK; right_now .. hear; hear .. HARM|mum|hitting|crying; put|pull ' +
      'pillow|hands|blanket .. ears; HARM|hits|hit mum|dad .. HABIT; HE|ELDER banging on; hit ' +
      'each_other; put|pull|pulled pillow|blanket .. ears; ' +
      'pulled|pushed|hit|kicks|kicked|threw|dragged mum|my_mum|mums',
    unless:
      `${harmless}; ^_THEM; late; joke; THEIRKIN ROUGH|HARM; for_fun; tickle; would; ` +
      'police_station_trip; KIN_told_me_off; funny; charger; kill_me when|if',
    example: 'dad hits mum and i can hear it',
    not: 'my sister hit the ball',
  },
  {
    name: 'marks of being hurt',
    when:
      'MARK from|because|on|where .. KIN|HE|him|her|last_night|belt|again; I|my|got|have MARK .. ' +
      'HIDE|hide|cover|sleeves|long|secret|fell|say|again|dont|see|school|come|cant; ' +
      'black_eye|black_eyes|handprint so|and_i|from|because; ' +
      'have|supposed|had|told|got|always|make|says|must .. say|tell .. ' +
      'i_fell|fell|walked|slipped|accident|stairs|door|bike; I said|say|told|lie ' +
      'i_fell|i_walked|it_was_an_accident .. HARM|HE|KIN|wall|stairs|door; BODY .. ' +
      'hurt|hurts|sore|broken where|because|from|since HE|KIN|he; cant|not ' +
      'sit|walk|swim|swimming|move|pe|change|lift .. ' +
      'HARM|marks|TOOL|stick|belt|because_of_him|he|hurts|bruises; marks have_to|must|need|are|if ' +
      'go|gone|fade|heal; long_sleeves .. because|hide|so; his|her|dad|KIN .. broke my ' +
      'BODY|wrist|bone|arm|nose; KIN bent|twisted|broke my|it_back; wear long .. because|hide',
    unless:
      'GAME; CARE; LOL; fell_off; bike; climbing; trampoline; ANIMAL; tree; skating; slide; ^_HE; ' +
      'dentist; judo; ink; doctor_said',
    example: 'i have to say i fell but it was not a fall',
    not: 'i have a bruise from climbing',
  },
  {
    name: 'locked up',
    when:
      'ELDER|HE|HE|SIBLING|boyfriend LOCK ME|us|KIN|the ' +
      'in|out|up|inside|outside|cellar|shed|room|cupboard|door|CELL; LOCK ME in|out|up|CELL; I ' +
      'am|get|got|was|be|been LOCK in|out|up|inside|again; LOCK out ' +
      'again|tonight|all|he|she|until|cold|dark|he_says; our|my CELL has|is .. LOCK|lock; KIN|HE ' +
      'uses it when; makes|make|made|puts|put|leaves|left|shuts ME .. ' +
      'outside|in_the_dark|in_the_cellar|in_the_shed|cupboard|snow|cold|out_all; not|never|wont ' +
      'allowed|let ME out|inside|eat|sleep|in|toilet|leave|drink; LOCK the|me|it .. ' +
      'with_me|on_me|me_in|fridge|food|kitchen; put|puts|throws|kicked|threw|kicks|throw me|us out; ' +
      'sent_me_out .. night|cold',
    unless:
      `${harmless}; HIDE_and_seek; toilet_door; bike; dog; phone; diary; by_mistake; ^_THEM; ` +
      'THEIRKIN LOCK; door_was_stuck; bathroom_so; once|ladder|caretaker|funny; sleepover; ' +
      'go_out|go_outside_play; party; cinema; allowed_to|allowed_out till; of_the_game',
    example: 'she locks me in the cellar when i am bad',
    not: 'i locked my bike outside',
  },
  {
    name: 'touched or watched',
    when:
      'ELDER|ADULT|HE|SIBLING|friend|boyfriend|boys|cousin TOUCH ME|my ' +
      'BODY|there|PRIVATE|in|at|where|when|under|and|WHEN|down|weird|on|secretly|$; ' +
      'uncle|cousin|ADULT|HE|SIBLING|stepdad|boyfriend TOUCH ME|my; hand|hands|fingers .. ' +
      'under|up|in|on|down my|me skirt|top|shirt|PRIVATE|pants|leg|thigh|trousers|dress; where|how ' +
      'he|she puts|put|looks; makes|make|made|wants|asked|wanted|forces ME .. ' +
      'TOUCH|touch|him|kiss|sit|lie|undress|watch|PRIVATE; ELDER|ADULT|HE|SIBLING|uncle|coach ' +
      'comes|come|climb|climbs|gets|get|came|walks|walk|is|lies|sneaks .. in|into|inside ' +
      'my|the|when|with bed|room|bath|shower|bathroom|bedroom|toilet|me|us; ' +
      'watch|watches|watching|looks|film|films|filmed|stares|peeks ME|us|at_us|at_me|when|my_sister ' +
      '.. PRIVATE|change|changing|dress|undress|shower|changes; ' +
      'does|do|did|doing|done|happens|happened .. stuff|things|bad|it|something|what to|with me|us; ' +
      'something|things|stuff bad|wrong|weird|happened|happens to_me|with_me|at_home; ' +
      'sit|sat|sits|sitting on HE|his|lap|knee|him .. and|feel|lap|knee|not; game with uncle|KIN .. ' +
      'hurts|dont|anymore; game .. with uncle|KIN .. hurts; HE|teacher|coach|ADULT|KIN ' +
      'watches|watch|films ME|us in|when PRIVATE; PRIVATE .. HE|ADULT|touched|hurts|him; ' +
      'dont|not|never like|want how|when|it|what .. TOUCH|hugs|uncle|he_does; bed .. pretend ' +
      'to_sleep|asleep; in_the_bathroom with|and .. lock|locks|you|me; he_touches; HE feels ME; HE ' +
      'does bad stuff|things; kissed|kisses me on_the_mouth; words for it; ' +
      'hold|held|holds|pin|pinned me|us down .. toilets|dont|HABIT|and; wants_me_to .. ' +
      'wash|bath|bed|sleep_in; because|when my|uncle|he|HE comes_in; bedtime .. he|HE comes; ' +
      'cant|cannot|dont|not sleep .. he|uncle|HE|ELDER comes|come; I said_stop|said_no .. ' +
      'didnt|not|dont; is it my_fault; lock for|on my_room|my_door; photos|pictures|videos of_me ' +
      'sleeping|changing|in_bed|undressed; share|shares shower|bath with; share his|her bed|shower; ' +
      'share my_bed with stepdad|uncle|him; stays|sits|lies in|on my_room|my_bed; people do who ' +
      'love; wear .. short|skirt|dress .. HE|he|him; my_teacher|my_coach|coach|teacher ' +
      'kisses|kissed|touches|strokes|hugs me; helps|help me change|undress|shower; play|plays|makes ' +
      'doctors|house|husband; under the_blanket|my_blanket|the_covers|my_clothes; from someone ' +
      'TOUCH; let him|HE because|watch',
    unless:
      'ANIMAL; LOL; goodnight; my_heart; feels_useless; knee_done; feelings; CARE; tractor; ' +
      'mum|dad|gran|baby TOUCH me_before; in_a_good; hair_cut; doctor; mum|dad|gran|grandad|aunt ' +
      'hugged|hugs|cuddled|cuddles|tickles|tickled|kisses|kissed me; baby',
    example: 'he touches me where my swimsuit is',
    not: 'the snow touched my nose',
  },
  {
    name: 'afraid of own people',
    when:
      'FEAR|HIDE ELDER|my_KIN; I FEAR|HIDE .. ' +
      'ELDER|my_KIN|him|he|her|she|he_is|keys|coming|footsteps .. ' +
      'drunk|drinks|home|angry|comes|is|gets|hits|shouts|there|back|finds|$; I|me FEAR ' +
      'of|from|at|when|if|that ELDER|my_KIN|HE|him|uncle|mine; I FEAR to ' +
      'go_home|of_home|at_home|be_home; FEAR go|going|come|be home|back|there|to_dads|to_mums; when ' +
      'HE|ELDER DRUNK|angry|mad .. HARM|hide|hurts|HE|i|we|run|turn|scared|me|us; ELDER|HE ' +
      'gets|is|was|comes|came|always DRUNK .. and|every|again|turn|HARM|SHOUT|i|we|so|then|me; HIDE ' +
      '.. in|under|behind .. when|from|because|right_now HE|ELDER|KIN; I HIDE when ' +
      'ELDER|he|she|they; hiding right_now; chair|bed|table|wardrobe|something ' +
      'against|under|in_front|before .. door; sleep with .. shoes|clothes|knife|one_eye|light .. ' +
      'run|so|scared|on; when .. keys|footsteps|car|door .. cant|breathe|hide|scared|freeze|shaking; ' +
      'dont|not|never|isnt feel|safe safe|at home|here|house|ours|there; my|our house|home not|isnt ' +
      'safe; says|said if i cry|tell|scream .. give|something; door|doors shut|shuts|closes|locks ' +
      '..; HE|ELDER finds|found|sees|saw .. dead|HARM|worse|kill; back_before HE wakes|up; worse ' +
      'when HE|ELDER|mum_goes; weekends|friday|sunday|holidays .. dads|KIN|home|him .. ' +
      'sick|throw|cry|scared|worse|beg|hate|bad|hurts|turn|alone; hate|dread|beg ' +
      'weekend|weekends|friday|holidays .. him|home|KIN|long|alone|dads; you_havent_seen HE; cant_go ' +
      'back|home .. there|KIN|he; please dont|not call|tell|send|ring .. ' +
      'mum|dad|home|parents|her|him; HE|ELDER nice|kind in_front|when_people|outside .. ' +
      'then|but|home|door; sleep|sleeps|hide|hid under|behind|in my|the bed|wardrobe|bath ' +
      'so|because|with|when|door; so|where HE|he cant_find|cant_get|cant_see me; KIN|ELDER DRUNK ' +
      'too|also|and|again|isnt; HE|ELDER|dad been drinking; when HE|ELDER lost|loses|has_had .. ' +
      'lose|drink|i; brother|sister|mum stands in_front; tummy|stomach|heart hurts|beats when .. ' +
      'car|keys|door|he|home|dads; wets|wet himself|herself|myself|the_bed .. ' +
      'when|because|scared|not_allowed; mum always says_sorry; ELDER screaming|screamed .. ' +
      'scared|hide|quiet',
    unless:
      'GAME; LOL; dark; ^_HE; ^_THEM; HIDE_and_seek; spiders; thunder|storm; BOOKWORK; FUN; THEIRKIN ' +
      'DRUNK; monster|dragon; ghost; sweets|chocolate; dentist; ANIMAL; jump_out; showed; surprise; ' +
      'miss_calls_me; if_i_was|were',
    example: 'i am scared when my stepdad drinks',
    not: 'he is scared of the wolf',
  },
  {
    name: 'like my own life',
    weak: true,
    when:
      'HE|ELDER|uncle|KIN|mine|ours does|did|do that|this|it|the_same|same ' +
      'to|too|me|us|also|as_well; that|this|it is|was like|what|how|exactly my|at|KIN ' +
      'house|home|life|ours|KIN|dad|does|in; same|it|that|this happens|happened|happen|is|as|at|goes ' +
      '.. to_me|at_home|my_house|at_mine|ours|mine|with_me|in_my|for_me; just|is like ' +
      'me|us|at_ours|ours|at_mine|my_house|my_life; i know|no how|why|what .. HE|KIN ' +
      'feels|ran|did|felt|girl|boy|same; I do|did|have|eat|hide|run|feel that|it|them|the_same ' +
      'too|as_well|also|either; me|we|i too|as_well|either; i|me also; mine|ours|my_KIN ' +
      'only|uses|has|does|is .. TOOL|worse|the_same|too|also; good_idea',
    unless:
      'LOL; agree; think|thought|like_it|liked; cheese|maths|tooth; shoes|voices|GAME; FUN; CARE; ' +
      'ANIMAL; idea_me; BOOKWORK; tall|eats; funny; i_was_right; died',
    example: 'that happens to me too',
    not: 'my dad is like the giant, he is so tall',
  },
]);
