"""What is well with a topic, said in a word to the question about it, and small comments.

``well_topic``: alone, and only where the topic was asked about, these say that it is as it
should be ("pink", "soft", "all tight").
"""

from __future__ import annotations

CLASSES = {
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
    "well_swelling": "flat plana plano desinflamada desinflamado",
    "well_bruising": "faded gone desaparecieron desaparecio",
    "well_fixator": """
        solid tight secure secured firm snug straight rigid sturdy intact clean firme firmes apretado
        apretada apretados apretadas fijo fija fijos limpio limpios limpia intacto seguro in_place
        """,
    "well_bandage": "dry clean snug secure intact seca seco limpia limpio intacta in_place",
    "well_incision": """
        dry clean closed flat neat tidy sealed intact healed seca seco limpia limpio cerrada cerrado
        plana sellada intacta pareja
        """,
    "well_energy": """
        calm settled relaxed resting rested playful perky cheerful content alert awake tranquilo
        tranquila descansando alegre animado animada contento contenta juguetona jugueton despierto
        despierta
        """,
    "well_pain": "comfortable comfy relaxed settled comodo comoda tranquilo tranquila",
    "portion": """
        cup cups bowl bowls bowlful plate plateful portion portions meal meals gram grams pouch
        pouches scoop scoops tin can taza tazas plato platos platillo porcion porciones gramos lata
        sobre sobres
        """,
}
