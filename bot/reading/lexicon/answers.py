"""What is well with a topic, said in a word to the question about it, and small comments.

``well_topic``: alone, and only where the topic was asked about, these say that it is as it
should be ("pink", "soft", "all tight").
"""

from __future__ import annotations

CLASSES = {
    "rather": "algo medio tantito ligeramente somewhat partly",
    "yesword": """
        all_well all_fine all_ok all_as_it_should_be todo_en_orden todo_en_su_lugar todo_en_regla
        ya_terminamos ya_termine
        """,
    "good": "normales bonita bonitas bonito completos completas",
    "sign": "tos cough coughs vomitado devuelto vomited sneezing wheezing estornudos tose",
    "well_gums": "pink rosy moist wet rosa rosas rosada rosadas rosita rositas sonrosadas humedas",
    "well_breathing": """
        regular calm quiet quietly easy easily steady even slow slowly relaxed calmly peaceful
        peacefully tranquilo tranquila calmado calmada suave pausada regularmente
        """,
    "well_belly": """
        soft flat relaxed squishy blanda blandita suave suavecita plana normalita floja
        """,
    "unneg": "sin_problema sin_problemas sin_dificultad sin_batallar",
    "well_swelling": "flat clear fue gone plana plano desinflamada desinflamado desaparecio",
    "well_bruising": "faded clear fue gone desaparecieron desaparecio",
    "well_stool": "went regular hizo fue clockwork each",
    "well_urine": "yellow clear light amarilla amarillita clara transparente went regular hizo fue each",
    "well_bathroom": "went regular hizo fue clockwork each",
    "well_drinking": "plenty enough suficiente bastante harta",
    "bad_fixator": """
        movement move moves moving moved wobble wobbly wobbles wobbling rattle rattling play
        movimiento mueve mueven movido suelto suelta sueltos flojo floja flojos baila bailan
        loose bent doblado chueco
        """,
    "bad_incision": "holes hole open gaps gap bumps lumps scabs scab crust costra costras",
    "samey": "as_it_was as_they_were como_estaba como_estaban",
    "bad_belly": """
        tight hard bloated bloating swollen big rumbling gurgling spots lumps tender dura duro
        tensa inflada inflado hinchada hinchado inflamada grande bolas ruidos
        """,
    "bad_bandage": """
        wet damp slipping slipped loose tight moved shifted mojada humeda floja apretada movida
        movido suelta aprieta wetness humedad
        """,
    "bad_breathing": "noise noisy noises rattle wheeze fast heavy effort ruido ruidos agitado rapida",
    "bad_gums": "pale white blue grey gray sticky dry palidas blancas moradas secas",
    "well_fixator": """
        solid tight secure secured firm snug straight rigid sturdy intact clean firme firmes derecho derecha derechos apretado
        apretada apretados apretadas fijo fija fijos limpio limpios limpia intacto seguro in_place
        """,
    "well_bandage": "dry clean snug secure intact seca seco limpia limpio intacta in_place",
    "well_incision": """
        costra_seca
        dry clean closed flat neat tidy sealed intact healed seca seco limpia limpio cerrada cerrado
        plana sellada intacta pareja
        """,
    "well_energy": """
        chilled chilling chillin snoozing snoring sleeping asleep lazing napping sleepy durmiendo
        dormido dormida descansa duerme mejor mejorando better improving
        calm settled relaxed resting rested playful perky cheerful content alert awake tranquilo
        tranquila descansando alegre animado animada contento contenta juguetona jugueton despierto
        despierta
        """,
    "well_pain": "comfortable comfy relaxed settled comodo comoda tranquilo tranquila",
    "portion": """
        litre litres liter liters g gr grs kg gramo litro litros racion raciones cup cups bowl bowls bowlful plate plateful portion portions meal meals gram grams pouch
        pouches scoop scoops tin can taza tazas plato platos platillo porcion porciones gramos lata
        sobre sobres
        """,
}
