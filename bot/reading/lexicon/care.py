"""Things of the household and of aftercare that several topics name."""

from __future__ import annotations

from .medicines import HUMAN

PAIN_PILL = """
    pain_one pain_ones la_del_dolor las_del_dolor el_del_dolor la_para_el_dolor
    pastilla_del_dolor pastillas_del_dolor medicina_del_dolor pastilla_para_el_dolor
    pastillita_del_dolor gotas_del_dolor jarabe_del_dolor
    """
"""Pain that only names what is given for it."""

CLASSES = {
    "meds": """
        med meds medicine medicines medication medications pill pills tablet tablets tab tabs
        capsule capsules dose doses antibiotic antibiotics antibiotico antibioticos
        antiinflammatory anti_inflammatory anti_inflammatories antiinflammatories anti_inflam
        painkiller painkillers pain_killer pain_killers pain_med pain_meds pain_relief nsaid
        nsaids liquid_med syrup drops medicina medicinas medicamento medicamentos pastilla
        pastillas pasti pastis pastillita pastillitas pildora capsula capsulas comprimido
        comprimidos tableta tabletas dosis remedio remedios jarabe gotero analgesico analgesicos
        antiinflamatorio desinflamatorio desinflamante medis medi jeringa carpro* gabap* melox*
        carprofen carprofeno gabapentin gabapentina meloxicam robenacoxib firocoxib grapiprant
        deracoxib tramadol amantadine amantadina buprenorphine trazodone trazodona cephalexin
        cefalexina amoxicillin amoxicilina clindamycin clindamicina doxycycline doxiciclina
        enrofloxacin enrofloxacina metronidazole metronidazol injection shot methocarbamol
        omeprazole famotidine maropitant prednisone calmante sedative
        """
    + PAIN_PILL,
    "painpill": PAIN_PILL,
    "humandrug": " ".join(sorted(HUMAN)),
    "pillword": """
        pill pills tablet tablets tab tabs med meds medicine medicines medication medications
        capsule capsules painkiller painkillers gummy gummies patch patches drops cream gel
        ointment thinners thinner syrup inhaler supplement supplements dose doses prescription
        pastilla pastillas pastillita pastillitas medicina medicinas medicamento medicamentos
        tableta tabletas capsula capsulas comprimido comprimidos remedio remedios jarabe crema pomada unguento
        parche gotas analgesico analgesicos pildora pildoras pasti pastis
        """,
    "pillkind": """
        blood_pressure bp pressure heart sleeping sleep thyroid diabetes diabetic cholesterol
        water_pill adhd anxiety hormone hrt birth_control depression migraine cold flu
        cold_and_flu hay_fever hayfever period iron prenatal diet antihistamine nerve
        human peoples cough headache steroid hydrocortisone eczema fluoride water blood joint_mobility kidney erectile epilepsy asthma arthritis
        vitamin vitamins multivitamin multivitamins vitamina vitaminas
        """,
    "wound": """
        wound wounds incision incisions cut scar stitch stitches staple staples puntitos suture sutures
        surgical_site surgery_site op_site surgery_area incision_site incisión seam line site
        closure wound_edge wound_edges herida heridas herida_quirurgica corte puntos punto
        puntada puntadas sutura suturas grapas grapa cicatriz costura cortada costurita heridita
        area_de_la_cirugia cirugia zona_operada glue tajo
        """,
    "bandageword": """
        strapping strapped_up strap bandage bandages dressing dressings wrap wrapping vet_wrap
        vetwrap cast splint bandaging vendaje vendajes venda vendas vendita ferula gasa gasas
        yeso bendaje parche apósito aposito soft_cast
        """,
    "coneword": """
        dona donita dona_inflable collar_inflable inflatable_collar recovery_collar cervical_collar plastic_thing lamp_thing space_collar blow_up_collar body_suit baby_grow babygrow bodi traje_quirurgico isavelino isabelina collar_protector pantallita cucuruchito embudito campanita pet_shirt
        cone cones collar lampshade elizabethan e_collar ecollar e_cone donut doughnut comb
        inflatable recovery_suit onesie bodysuit surgical_suit buster_collar cono conos
        isabelino collarin campana embudo lampara_isabelina collar_isabelino conito lamp_shade
        of_shame cono_de_la_verguenza pantalla babero collar_de_la_verguenza medical_suit
        hat_of_shame satellite_dish space_helmet plastic_collar cucurucho lamparita cone_thing
        collarino neck_ring vergonha cono_isabelino gorro_isabelino plato_isabelino lamparon
        """,
    "food": """
        food kibble breakfast dinner lunch supper tea meal meals bowl biscuits biscuit plate
        grub chow treats treat chicken rice tuna wet_food dry_food dog_food cat_food nosh
        brekkie brekky bites bite mouthful mouthfuls portion portions comida croqueta croquetas
        croquetitas plato pollo pollito atun sobre sobrecito desayuno cena almuerzo lata arroz
        pienso alimento premio premios salchicha caldo cosa snack snacks din_dins dindins scraps
        scrap croquet ration ham cheese nibbles crunchies feed feeding turkey mince gravy bocado
        bocados cucharada churu tazon balanceado
        huevito huevo papilla atole sopa jamoncito carnita higadito lomito_de bisquet tortillita
        queso quesito yogur
        """,
    "water": "water agua aguita agüita",
    "good_state": "clean dry closed",
}
