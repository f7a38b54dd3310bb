"""English words that carry no topic: negation, helpers, degree, time, people, mood."""

from __future__ import annotations

CLASSES = {
    "notours": """
        not_this_one not_ours not_my_dog not_my_cat not_the_patient not_the_one_you_operated not_the_one_you_did not_our_dog not_our_cat
        """,
    "itsme": """
        me_not_him me_not_her me_not_the_dog me_not_the_cat not_him_me not_her_me that_was_me thats_me_not that_would_be_me i_mean_me me_i_mean me_not_dog myself_not_him
        """,
    "unceasing": """
        wont_stop cant_stop doesnt_stop hasnt_stopped not_stopping isnt_stopping didnt_stop
        never_stops keeps_on still
        """,
    "longsince": "operated surgery operation op",
    "animalnoun": """
        dog dogs cat cats pup puppy pups kitten kitty spaniel terrier labrador lab retriever
        collie poodle bulldog frenchie chihuahua dachshund beagle husky shepherd shepherds
        alsatian rottweiler pug boxer greyhound whippet mastiff doodle cockapoo labradoodle
        corgi mutt mongrel tabby siamese persian ginger_tom tomcat perro perra perrito perrita
        gato gata gatito gatita cachorro cachorra chihuahuita pastor salchichita bulldogs
        spaniels terriers
        """,
    "neg": """
        non no not dont doesnt didnt wont wouldnt cant cannot couldnt hasnt havent hadnt isnt
        arent wasnt werent aint shouldnt never neither nor none nothing nobody without zero
        denies denying denied refuses refuse refused refusing unable_to failed_to fails_to
        free_of free_from absence_of lack_of no_complaints_of negative_for no_sign_of
        no_signs_of no_evidence_of not_a_bit no_longer not_even not_any no_more didn't_even
        ruled_out rule_out not_yet
        """,
    "ceased": "stopped quit ceased",
    "zero": "none nothing zero nil zilch zip nada nowt naught",
    "unneg": """
        no_speak no_see oh_no oh_god_no omg_no nada_mas nothing_more nothing_else no_change no_changes no_different no_difference no_idea no_clue no_worries no_problem
        no_prob no_doubt no_wonder no_joke no_kidding not_sure not_certain not_only not_just
        not_to_mention dont_know didnt_know cant_tell not_kidding not_joking cant_believe
        couldnt_believe cant_stop wont_stop doesnt_stop hasnt_stopped not_stopped not_stopping
        isnt_stopping didnt_stop dont_stop never_stops never_stopped doesnt_let_up no_let_up
        non_stop nonstop without_stopping not_great no_matter without_fail dont_worry
        not_to_worry no_rush no_fuss without_fuss without_a_fuss no_trouble without_any_trouble
        without_trouble no_bother no_hurry no_use no_drama without_complaint without_any_fuss
        not_bad not_too_bad nothing_to_worry_about no_need cant_help cant_get_him_to_stop
        cant_get_her_to_stop not_rule_out cant_rule_out cannot_rule_out not_ruled_out
        not_been_ruled_out not_necessarily no_end no_biggie no_sooner not_happy not_ideal
        not_good wasnt_looking wasnt_watching didnt_notice didnt_see not_nice nothing_major
        nothing_serious as_though_nothing as_if_nothing like_nothing not_half no_sorry no_wait
        not_pretty not_going_to_lie i_dont_like i_do_not_like
        """,
    "denial": """
        isnt_that isnt_as_if not_that_he not_that_she not_that_it its_not_that not_because
        not_the_case not_as_if not_as_though wasnt_that never_not cant_say wouldnt_say
        nor_is_it_that
        """,
    "stopneg": """
        keeps keep always constantly but just only except apart aside nevertheless nonetheless
        still yet besides although though because so until since after when if other_than than
        while cause whenever whereas however instead then unless
        """,
    "function": """
        the a an of to in on at is it he she his her him hers its was were are be been being i
        my me we our us you your they them their and or for with by from up out off down that
        this these those there has had have do does did will would can could as so very all any
        some too just now still even not no if but
        """,
    "aux": """
        am is are was were be been being has have had do does did will would can could may might
        must get gets got getting feel feels felt seems seem keeps keep kept started starts
        starting trying tries tried looks look going about_to im ive ill hes shes its theyre
        """,
    "adv": """
        just almost nearly so really very a bit little also even still now already again
        completely totally quite rather actually honestly all suddenly then too
        """,
    "be": """
        is are was were be been being hes shes its theyre am looks look looking seems seem
        seemed appears appear appeared gone went turned turning got getting gets became feels
        feel felt looked going stays stayed remains acting acts isnt wasnt arent
        """,
    "patient": """
        he she him her his hers hes shes it itself himself herself they them dog doggy doggo pup
        puppy pooch cat kitty kitten patient boy girl lad fella madam poorly_thing little_one
        baby fur_baby furbaby moggy hound mutt
        """,
    "person": """
        i me myself ive im we wife husband hubby mum mom mother dad father son daughter kid kids
        child children grandson granddaughter grandmother grandma grandpa nan nana sister
        brother aunt uncle partner boyfriend girlfriend neighbour neighbor friend mate boss
        roommate flatmate missus other_half postman vet doctor nurse toddler baby_brother cousin
        niece nephew colleague landlord somebody someone everybody everyone nobody
        """,
    "mine": """
        im_the_one i_was_the_one i_am_the_one me_thats it_is_me_that i_need_waking
        i_was_the_only i_got_bit i_am_allergic im_allergic
        its_me_that its_me_thats its_me_who i_came_over ive_come_over
        it_was_me my_nosebleed from_my_nose is_mine was_mine are_mine of_mine my_own mine
        my_breathing my_lungs my_blood my_thumb my_finger my_back my_stomach my_tummy my_head my_leg my_knee my_heart
        my_nose my_eyes my_arm my_chest my_nerves my_throat my_self my_foot my_gums my_belly
        my_skin my_breath
        """,
    "otheranimal": """
        other_dog other_cat other_dogs other_cats other_pup other_one our_other my_other
        another_dog another_cat his_brother his_sister her_brother her_sister housemate
        second_dog second_cat older_dog younger_dog neighbours_dog neighbors_dog neighbours_cat
        neighbors_cat friends_dog mums_dog moms_dog sisters_dog brothers_dog puppy_next_door
        rabbit hamster parrot guinea_pig horse pony hen chicken_coop goldfish other_animal
        other_pet old_dog_bess our_old_dog our_old_cat our_last_dog our_last_cat our_first_dog
        my_last_dog my_old_dog my_old_cat previous_cat dog_we_had cat_we_had his_mate his_pal
        her_mate her_pal littermate cousin_dog previous_dog last_dog old_dog_before first_dog
        next_doors another_animal friends_cat sisters_cat
        mothers_cat mums_cat brothers_cat cat_next_door dog_next_door neighbours_pup
        rabbits horses hens ewes ewe sheep goat goats ponies donkey chickens tortoise
        ferret budgie canary lizard snake piglet pigs cavy
        """,
    "slight": """
        bit little lil tad slight slightly mild mildly small minor somewhat faint touch fraction
        tiny teeny smidge smidgen trace minimal minimally modest hint sort_of kind_of kinda
        moderately wee_bit not_much not_too not_very not_that not_massively not_overly
        nothing_major nothing_serious ish pinprick not_really
        """,
    "very": """
        very really super extremely massive massively huge hugely badly lots loads tons double
        enormous enormously hella mega proper properly seriously severe severely significant
        significantly marked markedly considerable considerably incredibly terribly awfully
        awful terrible dreadfully horrible horribly big bigger biggest ginormous balloon
        ballooned balloons grapefruit orange tennis_ball golf_ball baseball football softball
        melon twice_the_size twice_as_big double_the_size twice_its_size much_more way_more
        a_lot way crazy insanely profuse profusely heavily heavy extensive proper_big hell
        ridiculously so_much such pretty_bad quite_bad apple lemon egg fist
        """,
    "more": """
        more worse bigger larger puffier redder sorer increased increasing increases growing
        grown spreading spread spreads worsening worsened up_not_down creeping deteriorated
        progressively angrier
        """,
    "fewer": """
        less better smaller reduced reducing decreasing decreased improving improved improvement
        shrinking shrunk settling settled fading faded subsiding subsided easing eased
        dropped dropping fallen_away dropping_away fallen_right flatter flattening softer melting melted receded going_down gone_down coming_down came_down come_down down_a_lot going_away went_down
        goes_down healing drying calmer lighter paler_bruise half_what resolving receding
        """,
    "samey": """
        same unchanged no_change no_changes no_different no_difference identical similar
        as_before as_yesterday same_as just_as as_always steady stable hasnt_changed not_changed
        about_the_same no_worse_and_no_better no_better_and_no_worse no_worse_no_better no_worse_nor_better neither_better_nor_worse no_better_no_worse
        """,
    "hedge": """
        maybe perhaps possibly might may think thinks guess probably seems seem seemed could_be
        sort_of kind_of suspect wonder unsure not_sure cant_tell looks_like_it i_think
        could_be_my_imagination my_imagination imagining_it dont_know_if im_not_sure
        not_a_hundred not_100 not_convinced id_say ill_say hard_to_tell hard_to_say not_certain apparently almost looks_like
        """,
    "ifword": """
        what_if in_case incase suppose supposing should_he should_she should_it unless had_he
        were_he
        """,
    "ifvoid": """
        if_im_honest if_i_am_honest if_that_helps if_you_ask_me if_possible if_you_can
        if_you_could if_you_have as_if even_if if_you_like if_not if_anything if_i_remember
        if_you_want if_it_helps if_only_a what_if_anything if_you_please if_you_dont_mind
        if_memory_serves if_ever
        dont_know_if_this dont_know_if_it dont_know_if_thats not_sure_if_this not_sure_if_it
        if_this_matters if_it_matters if_its_relevant
        """,
    "touchif": "if_i if_we if_you if_anyone if_anybody if_someone if_touched if_we_touch",
    "wish": """
        wish wishing hope hopes hoping hopefully would_love id_love cant_wait if_only
        looking_forward would_like id_like dream_of longing praying fingers_crossed be_nice_if
        would_be_nice miss_the_days dying_to_see
        """,
    "future": """
        will gonna going_to tomorrow next_week would could_become might_get will_be hell shell
        """,
    "worry": """
        id_hate would_hate worried afraid scared terrified frightened fear nervous anxious
        concerned dreading paranoid worries
        """,
    "purpose": """
        so_he_doesnt so_she_doesnt so_he_cant so_she_cant so_that_he so_that_she to_stop_him
        to_stop_her to_keep_him_from to_keep_her_from to_prevent to_avoid stop_him_from
        stop_her_from stopping_him_from stopping_her_from keep_him_from keep_her_from
        keeping_him_from keeping_her_from so_he_wont so_she_wont so_it_doesnt dont_want_him
        dont_want_her dont_want_it not_allowed isnt_allowed supposed_to_be_on instructions
        leaflet sheet_says in_case_he in_case_she watching_for looking_out_for watch_for
        keep_an_eye keeping_an_eye preventing before_he_can warned_me told_me_to rather_than
        look_out_for watch_out_for
        """,
    "appears": """
        sounds sound sounded looks look looked seems seem seemed feels felt acting acts acted
        behaving se_ve parece luce actua
        """,
    "asif": "as_if as_though like_hes like_shes like_he like_she like_its",
    "stopping": "stop stopped stops quit stopping",
    "intent": "will ill id_do going_to gonna about_to shall was_going_to planning due heading off_to",
    "later": """
        later later_on soon in_a_bit in_a_while in_a_minute in_a_moment in_a_sec shortly
        any_minute al_rato al_ratito mas_tarde en_un_rato en_un_ratito en_un_momento
        ahorita_lo ahorita_la ahorita_se al_rato_lo enseguida
        """,
    "whileword": "while bit moment minute sec rato ratito momento momentito ratico",
    "wanting": """
        want_to wanna need_to have_to should_be_able hope_to hoping_to plan_to planning_to
        intend_to meaning_to supposed_to quiero queremos pienso pensamos quisiera tengo_que
        tenemos_que hay_que me_falta nos_falta
        """,
    "recurred": """
        come_back came_back returned recurred reappeared happened_again happened repeated
        started_again come_again come_back_again been_back done_it_again restarted
        """,
    "denyword": """
        false_alarm turned_out turns_out cheek_of_it not_true he_was_wrong she_was_wrong
        nothing_of_the_sort my_mistake panicked_for_nothing
        """,
    "thought": """
        thought_he thought_she thought_it i_thought we_thought was_convinced looked_like_he_was
        i_feared
        thinking_it thinking_he thinking_she thinking_that
        """,
    "farpast": """
        before_surgery before_the_surgery before_the_op before_the_operation before_his_op
        before_her_op last_year years_ago as_a_puppy as_a_kitten used_to when_he_was_a
        when_she_was_a last_month months_ago before_he_came before_she_came pre_op preop
        a_year_ago always_had last_summer last_winter in_his_youth
        before_the_accident two_weeks_ago back_in when_we_had when_i_had
        a_month_ago a_few_weeks_ago two_months_ago weeks_back
        months_back when_he_was_little when_she_was_little as_a_pup since_a_pup
        first_op first_surgery first_operation last_surgery previous_surgery previous_op
        other_surgery
        """,
    "nearpast": """
        first_night first_day last_week the_other_day on_monday on_tuesday on_wednesday
        on_thursday on_friday on_saturday on_sunday last_monday last_tuesday last_wednesday
        last_thursday last_friday last_saturday last_sunday days_ago day_after_surgery at_first
        in_the_beginning the_day_of initially earlier_in_the_week the_first_couple
        straight_after at_the_beginning coming_home drive_home ride_home car_home
        after_the_anaesthetic day_one day_of
        """,
    "sincenot": """
        not_since none_since nothing_since not_once_since not_again never_again no_more_since
        hasnt_since not_since_then hasnt_happened_since nothing_since_then not_once_since_then
        none_since_then all_good_since fine_since ok_since clear_since hasnt_done_it_since
        but_not_since but_none_since hasnt_again not_anymore not_any_more no_more
        hasnt_been_since no_further never_since fine_now ok_now gone_now settled_now stopped_now
        no_longer no_recurrence hasnt_recurred
        behind_us behind_him behind_her long_over all_over_now over_and_done well_over_it
        over_it_now cleared_up past_that
        """,
    "nowword": """
        now today finally eventually in_the_end third_time tonight at_last since this_morning this_mornin as_of_today these_days lately
        currently this_evening this_afternoon then afterwards
        this_week
        """,
    "barely": """
        hardly barely scarcely hardly_any barely_any next_to_nothing almost_nothing almost_no
        only_just
        """,
    "fix": """
        no_sorry no_wait i_mean sorry_i_meant correction scratch_that make_that i_meant
        or_rather sorry_no actually_no my_bad typo
        """,
    "thanks": """
        heartemoji thanks thank_you thank cheers ta grateful appreciate much_appreciated
        bless_you thankyou ta_very_much many_thanks
        """,
    "hello": """
        hi hello hey hiya morning good_morning good_evening good_afternoon good_night evening
        bye goodbye goodnight see_you night howdy greetings dear
        """,
}
