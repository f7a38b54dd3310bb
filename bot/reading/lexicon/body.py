"""Parts of the body, good and bad words that many topics share."""

from __future__ import annotations

CLASSES = {
    "legword": """
        leg legs limb hind hindleg foot paw paws pata patas patita patitas pierna piernita
        hindlimb back_leg bad_leg operated_leg surgical_leg rear_leg hind_leg front_leg foreleg
        forelimb knee hock stifle ankle pata_mala pata_operada patica hip thigh shin wrist elbow
        rodilla cadera muslo codo limbs extremidad miembro feet pawsie toe toes foots
        """,
    "joint": """
        knee stifle hock ankle hip elbow wrist shin thigh rodilla cadera codo muslo tobillo
        corva joint articulacion carpus tarsus leg paw foot pata patita pierna tibia femur
        """,
    "ground": "floor ground down suelo piso tierra lino carpet tiles grass",
    "bodyword": """
        eye eyes ear ears nose tail skin head neck ojo ojos oreja nariz cola piel cabeza cuello
        mouth lip lips boca labio side chest pecho rash lump bump bulto bola bolita sarpullido
        """,
    "good": """
        todo_en_orden en_orden fine good great ok well normal normally perfect perfectly lovely
        excellent brilliant alright grand happy super fab fabulous wonderful smashing champion
        spot_on as_usual as_normal no_problem no_problems no_issues usual doing_well going_well
        on_track all_good all_well nothing_to_report nothing_new no_concerns no_worries
        same_as_always like_always top_notch tip_top unremarkable wnl within_normal_limits
        nicely beautifully brilliantly a1 a_ok no_bother bien excelente perfecto perfecta
        perfectamente de_maravilla chido chida padre todo_bien todo_normal sin_novedad
        sin_novedades de_lujo al_cien al_100 joya barbaro barbara genial buenisimo tranqui
        sin_problema sin_problemas como_siempre correctamente super_bien re_bien bastante_bien
        muy_bien al_tiro de_diez diez_puntos normalmente normalito impecable fantastico no_probs
        like_a_champ like_a_star sin_broncas without_complaint without_trouble without_a_fuss
        without_fuss without_any_trouble thumbsup
        """,
    "sign": """
        swelling swollen redness red discharge pus smell odour odor blood bleeding bruising
        bruise bruises pain limp limping vomiting vomit diarrhea diarrhoea licking chewing heat
        warmth hot gap gaping oozing ooze straining retching coughing panting seizure seizures
        fever whining crying whimpering puffiness puffy drainage exudate weeping seeping opening
        separation accident accidents sick puking scratching biting shaking trembling open
        smelly stink hinchazon hinchado hinchada inflamacion inflamada inflamado rojo roja
        enrojecimiento secrecion olor mal_olor sangre sangrado moreton moretones dolor vomito
        vomitos diarrea fiebre abierta abierto supuracion liquido calor cojera lamerse lamido
        quejido quejidos convulsiones convulsion popo pipi poop pee wee poo hematoma limps bumps
        bump exudado dehiscence erythema edema oedema lethargy anorexia nausea haematoma
        crepitus
        """,
    "woundsign": """
        swelling redness discharge pus smell odour odor heat bruising gap gaping oozing ooze
        drainage exudate weeping seeping opening separation hinchazon inflamacion enrojecimiento
        secrecion olor liquido calor supuracion moreton moretones red swollen rojo roja hinchado
        hinchada exudado dehiscence erythema edema oedema blood bleeding sangre
        """,
    "wrongness": """
        something_wrong something_is_wrong somethings_wrong isnt_right not_right
        doesnt_look_right doesnt_seem_right algo_le_pasa algo_anda_mal algo_no_anda algo_no_esta
        not_looking_good doesnt_look_good no_se_ve_bien no_lo_veo_bien no_la_veo_bien
        no_esta_bien not_doing_well isnt_doing_well in_a_bad_way not_well isnt_well not_good
        not_great going_downhill
        """,
    "alarm": """
        worried worry worrying concerned concern scared weird strange wrong emergency help bad
        badly awful horrible terrible dying dead dies urgent hurry worse serious cyst
        odd_looking funny_looking not_right isnt_right doesnt_look_right something_wrong mal
        raro rara rarito rarita preocupa preocupada preocupado preocupados urgente emergencia
        ayuda auxilio grave muere muriendo muerto muerta fea peor extrano extrana feo malo mala
        malito malita poison poisoned veneno envenenado envenenada infection infected infeccion
        infectada infectado broken broke roto rota quebro fractura fracture not_himself
        not_herself paralyzed paralysed paralizado paralizada shock allergic alergica alergia
        reaction alarming fever fiebre calentura choking ahogando bled sangre blood
        """,
    "smalltalk": """
        million lads lass lasses pal pals folks ladies obliged bunch ye yous yis sound tons
        heaps fair play kindly ah lol fab super mate sir maam miss hun hon gang crew pet
        kind kindness lovely weekend marvellous marvelous wonderful helpful dear love xx xxx lol
        haha day evening night week best team everyone guys amazing awesome angels lifesavers
        patience time support care caring ever let ones need bless god see soon much really
        appreciated you youve youre all so hope having have help helping answering answer reply
        listening regards sincerely cheers pleasure welcome holiday christmas merry again last
        know being there star stars legend legends amable amables dios bendiga bendiga_a buen
        fin semana apoyo atencion ayuda paciencia linda lindo excelente servicio equipo saludos
        abrazo abrazos besos igualmente todo todos toda tarde noche dia feliz navidad corazon
        angel angeles responder contestar siempre tan son estar pendiente pendientes descanse
        descansen hasta luego pronto lindas lindos tengan tenga pase pasen jaja jajaja
        mil the are smashing
        """,
    "meh": "so_so meh iffy",
    "excuse": """
        sorry bother you write writing late hour perdon disculpe disculpen molestia hora
        """,
    "yesword": """
        yes yep yeah yup sure yessir affirmative absolutely definitely certainly indeed aye done
        ok okay thumbsup of_course all_done finished completed did sorted check checked
        roger job_done sip si simon claro listo lista hecho hecha ya_esta por_supuesto
        afirmativo correcto sale dale vale ya_quedo sipi sisi simón ya_quedaron de_una ya_se_lo
        ya_lo_hice cumplido efectivamente desde_luego ya_se_le_dio ya_se_la_di ya_se_lo_di
        ya_le_di obvio both ambos ambas as_told just_did already_did we_did i_did he_did she_did
        he_has she_has it_is she_is he_is he_had yesss tick ticked
        aja ajam
        """,
    "noword": """
        no nope nah not never negative didnt couldnt havent hasnt wasnt cant thumbsdown nada nel
        nop negativo para_nada todavia_no aun_no not_yet ya_no nones ni_madres forgot skipped
        no_way not_today
        absolutely_not definitely_not certainly_not of_course_not claro_que_no
        por_supuesto_que_no
        """,
    "notyes": """
        ok_but notquite absolutely_not definitely_not certainly_not of_course_not claro_que_no
        por_supuesto_que_no desde_luego_que_no obvio_no obvio_que_no yeah_no yes_but_no
        yeah_right
        """,
    "notdone": """
        too_hot too_cold too_wet raining rained pouring snowing llovio lloviendo llovia forgot
        forgotten skipped skip skipping missed miss didnt couldnt havent not_yet not_today
        hoy_no didn't wouldnt wont_let wouldnt_let no_time ran_out_of_time too_busy later
        tonight postponed aun_no todavia_no olvido olvide olvidamos se_me_olvido se_nos_olvido
        se_me_paso se_nos_paso no_pude no_pudimos no_se_pudo no_alcance no_alcanzamos no_hubo
        no_se_deja no_se_dejo no_quiso no_le no_lo no_la no_hemos no_he no_me_dio_tiempo no_tuve
        no_nos_dio me_falto hates hated refused refuses cant
        nothing imposible impossible wont skipeamos gave_up saltamos salte no_deja no_quiere
        nadie_pudo unable struggle_too ni_de_chiste
        slipped_my_mind slipped_our_minds out_of_my_head never_happened didnt_happen
        se_me_fue_el_santo se_me_borro se_me_barrio too_icy too_wet_out too_slippery too_dark
        stayed_in stopped_in stayed_home stayed_indoors bad_weather chucking_it_down
        hacia_mucho_frio hacia_mucho_calor hizo_mucho
        having_none none_of_it wasnt_having_it not_having_it wouldnt_have_it blowing_a_gale
        """,
    "afterzero": """
        since today tonight at all so yet in for this desde hoy en hace all_day still ayer todo
        this_morning
        """,
    "reported": """
        swears told said says reckons reckoned thought thinks swore claimed dijo dice dicen
        dijeron juraba jura cree asegura
        """,
    "ownbody": """
        ankle ankles tobillo tobillos wrist elbow shoulder codo hombro muneca
        thumb back head stomach tummy knee leg arm foot heart throat chest nose eyes nerves
        thumbs wrist blood dedo mano espalda cabeza estomago rodilla pierna brazo pie corazon
        garganta pecho nariz ojos sangre panza
        """,
    "both": """
        both both_of_them both_meds the_two las_dos los_dos ambas ambos everything all_his_meds
        all_her_meds todas_sus todos_sus all_the_meds todo both_his both_her all_of_them
        """,
    "numword": """
        one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen
        sixteen seventeen eighteen nineteen twenty thirty forty fourty fifty sixty seventy
        eighty ninety hundred thousand point half quarter couple few several cero uno dos tres
        cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciseis
        diecisiete dieciocho diecinueve veinte veintiuno veintidos veintitres veinticuatro
        veinticinco veintiseis veintisiete veintiocho veintinueve treinta cuarenta cincuenta
        sesenta setenta ochenta noventa cien ciento doscientos mil medio media cuarto mitad par
        varias varios twice thrice minute minutes hour hours day days week weeks minuto minutos
        hora horas dia dias semana semanas metre metres meter meters metro metros yard yards
        feet miles mile kilometros cuadra cuadras block blocks second seconds segundos degrees
        grados celsius fahrenheit oclock noon midnight mediodia medianoche times time veces vez
        monday tuesday wednesday thursday friday saturday sunday lunes martes miercoles jueves
        viernes sabado domingo morning afternoon evening night tonight yesterday today tomorrow
        manana tarde noche ayer hoy anoche breakfast lunch dinner
        """,
}
