"""Spanish words that carry no topic: negation, helpers, degree, time, people, mood."""

from __future__ import annotations

CLASSES = {
    "notours": """
        no_este no_el_mio no_la_mia no_el_operado no_la_operada_perra no_el_paciente no_mi_perro no_mi_gato
        """,
    "itsme": """
        fui_yo soy_yo era_yo yo_no_el yo_no_ella yo_no_mi_perro yo_no_el_perro yo_no_la_gata digo_yo
        """,
    "unceasing": """
        no_para no_deja no_ha_parado no_deja_de no_para_de sin_parar no_cede sigue
        """,
    "neg": """
        negado negando niegan libre_de negativo_para sin_quejas_de no nunca jamas ni tampoco sin
        ningun ninguno ninguna nadie niega rehusa ya_no todavia_no aun_no no_ha ni_siquiera
        nada_de sin_nada_de ausencia_de descarta ni_tantito
        """,
    "ceased": "dejo_de deja_de paro_de dejado_de ya_dejo",
    "zero": "nada ninguno ninguna cero naa nadita",
    "unneg": """
        no_se_que no_se_como no_se_por no_se_donde no_se_cuando no_se_ni no_sabe no_cambia no_hay_cambios sin_cambios sin_cambio no_para
        no_paro no_deja no_ha_parado no_ha_dejado no_deja_de no_para_de no_dejo_de sin_parar
        no_solo no_solamente no_me_fije no_importa no_hay_problema no_hay_de_que no_te_preocupes
        no_se_preocupe no_se_preocupen no_hay_pedo no_manches no_mames no_inventes sin_problema
        sin_problemas no_es_urgente no_estoy_seguro no_estoy_segura no_puedo_creer no_aguanto
        no_aguanta_mas sin_falta no_me_di_cuenta no_nos_dimos_cuenta no_pasa_nada sin_pena
        no_hay_prisa no_le_para no_se_le_quita no_cede no_se_le_corta no_perdon no_espera no_wey
        no_guey no_lo_puedo_creer no_termina_de no_manchen sin_querer no_sabemos no_sabia
        no_nomas no_hay_diferencia no_hay_quien no_quiero_molestar no_vi no_vimos no_me_gusta
        no_tan_bien no_muy_bien no_del_todo sin_pedos sin_broncas como_si_nada sin_duda
        sin_embargo sin_quejarse sin_chistar sin_protestar
        ni_modo
        """,
    "denial": """
        no_es_que no_es_cierto_que no_era_que no_fue_que nunca_no no_vayan_a_creer
        """,
    "stopneg": """
        sigue siempre anda embargo pesar obstante pero solo solamente nomas sino excepto aunque
        porque hasta desde despues cuando salvo aparte mas_bien en_cambio menos_mal si entonces
        nada_mas desde_que y_eso
        """,
    "function": """
        el la los las un una unos unas de del al a en con por para que se le lo les su sus mi
        mis es esta estan son fue era ha han hay y o e ya muy mas me te nos si como no yo ella
        esto eso este esa ese
        """,
    "aux": """
        es esta estan estaba estuvo fue ha he hemos han habia sigue siguio sigo anda ando andaba
        estoy estamos empezo empece quedo quede puso puse tiene tengo tenia se me le ya casi voy
        iba soy
        tuvo tuve tuvieron
        """,
    "adv": """
        muy ya casi tan todavia bien mucho poco algo medio bastante tambien ahora ahorita hoy
        aun siempre un re super
        """,
    "be": """
        es esta estan estaba estuvo sigue siguen anda andaba quedo se_ve se_ven se_mira luce
        parece tiene trae traia ve veo noto noté amanecio desperto salio puso pusieron veia vi
        estar siendo sido
        """,
    "patient": """
        ella lo la le perro perra perrito perrita perrhijo gato gata gatito gatita michi mishi
        michito peludo peluda cachorro cachorra gordo gorda flaco bebe mascota lomito paciente
        chiquito chiquita flaca gordito gordita negrito negrita viejito viejita amor_mio peque nene nena animalito minino minina firulais pobrecito pobrecita
        """,
    "person": """
        yo esposo esposa marido mujer hijo hija nino nina niño niña mama papa madre padre suegra
        suegro abuela abuelo hermana hermano tia tio cunada cunado vecina vecino amiga amigo
        novio novia pareja jefe prima primo comadre compadre viejo vieja senora señora doctor
        doctora veterinario veterinaria alguien nieto nieta sobrino sobrina nosotros muchacha
        roomie roomate
        abuelita abuelito suegrita tiita vecinita cunadita jefecita bebita sobrinito nietecito
        nietecita
        """,
    "mine": """
        soy_yo era_yo fui_yo yo_soy_la yo_soy_el yo_fui son_mias son_mios eran_mias eran_mios
        era_la_mia era_el_mio soy_el_que soy_la_que fui_la_que fui_el_que
        me_he_dormido me_dormi me_quede_dormido me_quede_dormida
        es_mia es_mio era_mia era_mio mi_sangre mi_dedo mi_mano me_duele me_duelen me_corte
        me_cai me_desmaye me_siento me_maree mi_estomago mi_cabeza mi_espalda mi_rodilla
        me_dio_fiebre tengo_fiebre tengo_gripa vomite_yo yo_vomite mi_panza me_resbale
        me_enferme me_enfermé me_lastime mi_presion mi_pie mi_pierna mi_corazon me_falta_el_aire me_quede_sin_aire me_faltaba_el_aire me_ahogaba
        me_torci me_doble_el me_quebre me_rompi me_fracture me_muero casi_me_da casi_me_desmayo casi_me_muero me_queme yo_tengo me_dio_el
        me_pegue me_golpee soy_yo
        """,
    "otheranimal": """
        otra_gata otro_gato otra_perra otro_perro otra_perrita otro_perrito la_otra el_otro
        otra_gatita otro_gatito mi_otro mi_otra nuestra_otra nuestro_otro los_otros las_otras
        perro_del_vecino perra_del_vecino gato_del_vecino perro_de_mi gato_de_mi perra_de_mi
        gata_de_mi perrita_de_mi perrito_de_mi su_hermano su_hermana su_hermanito su_hermanita
        conejo loro perico hamster pajaro gallina caballo tortuga la_mas_chica el_mas_chico
        perro_de_la gato_de_la perro_del gato_del gata_del perra_del otro_animal perrita_del
        mi_otra_perra el_del_vecino la_del_vecino su_companera perro_anterior perra_anterior
        gato_anterior gata_anterior
        conejos caballos gallinas vaca vacas borrego borregos chiva chivas cuyo tortugas pajaros
        pericos yegua burro
        """,
    "slight": """
        poco poquito poquita tantito tantita ligero ligera ligeramente leve levemente algo medio
        media_hinchada pelin pelito cachito minimo minima pequeno pequena chiquito chiquita
        un_poco no_mucho no_tanto no_muy no_tan casi_nada gotita gotitas puntito chispa una_nada
        pizca rojita rosita rosado poquitin algun tirando_a no_mucha no_tanta
        """,
    "very": """
        muy mucho mucha muchisimo muchisima un_chingo bastante re demasiado demasiada enorme
        harto harta hartisimo super gigante grandota grandote grande grandisimo grandisima
        tremendo tremenda horrible terrible fuerte fuertes exagerado severo severa severamente
        pelota globo toronja naranja al_doble el_doble doble un_monton montones cañon un_buen
        hinchadisima hinchadisimo bien_hinchada bien_hinchado mega rete bien_feo bien_fea feo
        fea feisimo limon huevo manzana melon a_chorros abundante abundantes
        """,
    "more": """
        peor mas empeoro empeora empeorando empeorado aumento aumentado aumenta crecio creciendo
        crece creció extendio extendiendo cada_vez_mas va_creciendo va_en_aumento subio
        """,
    "fewer": """
        menos mejor mejora mejorando mejoro bajo bajado bajando baja disminuyo disminuyendo
        disminuido reducido reduciendo cediendo desinflamando desinflamo desinflamado
        deshinchando deshincho desapareciendo va_a_menos yendo_a_menos va_cediendo va_mejor va_bajando ha_bajado menor quitando bajandole
        bajandose se_le_quito
        """,
    "samey": """
        igual igualito mismo misma como_ayer como_siempre sin_cambios no_cambia sin_cambio
        igual_que lo_mismo estable de_siempre igual_de ni_mejor_ni_peor no_ha_cambiado
        sigue_igual
        """,
    "hedge": """
        quizas quiza tal_vez talvez creo parece a_lo_mejor capaz puede_que puede_ser como_que
        segun supongo no_estoy_seguro no_estoy_segura igual_y yo_creo diria se_me_hace no_se_si
        chance posiblemente al_parecer pareciera
        """,
    "ifword": """
        y_si que_pasa_si por_si en_caso no_se_si si_acaso me_pregunto_si quisiera_saber_si
        dime_si digame_si saber_si aunque_sea que_hago_si en_caso_de
        """,
    "ifvoid": """
        como_si por_si_acaso_les si_no_es_molestia si_me_pueden si_pueden si_puede si_gusta
        si_gustan si_no_les_molesta si_acaso_un si_es_posible casi_si por_si_les_sirve
        por_si_sirve si_les_sirve si_mal_no_recuerdo
        no_se_si_importe no_se_si_sirva no_se_si_sea_importante
        """,
    "wish": """
        ojala espero_que quisiera_que quisiera ojalá me_gustaria desearia que_ganas esperemos
        esperamos_que tengo_ganas_de_que extraño extrano quien_pudiera ya_quiero_que
        """,
    "future": "manana va_a_ser ira se_va_a_poner podria pudiera vaya_a vayan_a",
    "worry": """
        miedo preocupa preocupada preocupado temo temor asusta me_da_miedo me_preocupa nervios
        pendiente
        """,
    "purpose": """
        para_que_no pa_que_no para_evitar pa_evitar para_que_deje evitar_que con_tal_que_no
        no_vaya_a no_vaya_ser no_sea_que indicaciones me_dijeron_que_si las_instrucciones
        cuidando_que vigilando_que estoy_al_pendiente_de por_miedo_a no_quiero_que
        no_queremos_que antes_de_que evitando_que no_dejo_que no_lo_dejo no_la_dejo
        que_vigilara que_vigile que_vigilaramos que_me_fijara que_nos_fijaramos me_fijara_si
        vigilara_si estar_pendiente al_pendiente_de
        """,
    "asif": "como_si como_que_si cual_si",
    "stopping": "deje dejara dejar pare parara",
    "intent": """
        voy_a vamos_a va_a ahorita_le ahorita_se ahorita_la voy_a_darle apenas_le_voy por_darle
        le_voy se_la_voy se_lo_voy iba_a
        """,
    "recurred": "vuelto volvio vuelto_a regresado repetido regreso ha_vuelto",
    "denyword": """
        falsa_alarma resulto_que no_es_cierto no_es_verdad fue_mentira estaba_equivocado
        me_equivoque me_asuste_por_nada no_era_cierto era_broma
        resulta_que_era resulto_que_era resulta_que_eran
        """,
    "thought": """
        pense_que pensé_que crei_que creia_que pensaba_que pensamos_que creimos_que parecia_que
        """,
    "farpast": """
        antes_de_la_cirugia antes_de_la_operacion antes_de_operar antes_de_operarlo
        antes_de_operarla el_ano_pasado hace_años hace_anos hace_meses de_cachorro de_cachorra
        de_chiquito de_chiquita cuando_era antes_del_accidente hace_mucho el_mes_pasado solia
        la_vez_pasada
        hace_un_mes hace_dos_meses hace_tres_semanas hace_semanas hace_unas_semanas
        hace_un_par_de_meses hace_tres_meses hace_un_ano hace_dos_semanas
        la_primera_cirugia la_otra_cirugia la_primera_operacion la_otra_operacion cirugia_pasada
        cirugia_anterior
        """,
    "nearpast": """
        primera_noche primer_dia la_semana_pasada el_otro_dia el_lunes el_martes el_miercoles
        el_jueves el_viernes el_sabado el_domingo al_principio antier anteayer los_primeros_dias
        recien_llego cuando_llego hace_dias dia_de_la en_el_camino
        """,
    "sincenot": """
        ya_no desde_entonces_no no_otra_vez no_ha_vuelto_a no_ha_vuelto no_volvio ya_no_mas
        desde_entonces_nada desde_entonces_ya hoy_no hoy_nada ya_esta_bien ya_se_le_quito
        ya_se_le_paso ya_paso ya_nada no_se_ha_repetido no_lo_ha_vuelto no_la_ha_vuelto
        ya_quedo_atras quedo_atras ya_se_acabo ya_se_compuso ya_se_alivio se_le_quito
        eso_ya_paso
        """,
    "nowword": """
        hoy ahora ahorita ya esta_manana amanecio hoy_ya por_fin finalmente al_final ultimamente al_fin luego despues
        esta_semana
        """,
    "barely": "apenas apenitas casi_no casi_nada a_penas apenas_si",
    "fix": """
        no_perdon digo no_espera perdon_eran quise_decir mejor_dicho perdon_fueron no_digo
        me_equivoque_fueron corrijo
        """,
    "thanks": """
        gracias muchas_gracias mil_gracias agradezco agradecida agradecido muy_amable
        muy_amables dios_los_bendiga bendiciones agradecidos agradecidas
        """,
    "hello": """
        hola buenas buenos_dias buen_dia buenas_tardes buenas_noches que_tal saludos adios
        hasta_luego nos_vemos oye oiga oigan holi holis bendecido_dia buenas_noche
        """,
}
