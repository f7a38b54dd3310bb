"""Things of the household and of aftercare that several topics name."""

from __future__ import annotations

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
        """,
    "humanmeds": """
        blood_pressure_pill blood_pressure_tablet heart_pill heart_tablet water_pill
        water_tablet thyroid_pill pressure_pill pressure_pills sleeping_tablet paracetamol
        acetaminophen acetaminofen ibuprofen ibuprofeno aspirin aspirina aspirins naproxen
        naproxeno diclofenac diclofenaco ketorolac ketorolaco codeine codeina antidepressant
        antidepressants antidepresivo antidepresivos xylitol blood_pressure_tablets
        blood_pressure_pills blood_pressure_meds blood_pressure_medication heart_pills
        heart_tablets sleeping_pills sleeping_pill sleeping_tablets water_tablets diabetes_pills
        thyroid_pills birth_control vitamins_mine contraceptive contraceptives human_medicine
        human_pills human_meds human_medication human_painkiller human_painkillers
        peoples_medicine peoples_pills people_medicine people_meds pastillas_de_la_presion
        pastilla_de_la_presion pastillas_para_la_presion pastilla_para_la_presion
        pastillas_para_dormir medicina_de_gente medicina_de_humano medicina_de_humanos
        medicina_humana medicinas_de_gente pastillas_de_gente medicina_para_la_presion
        anticonceptivas beta_blockers betablockers statins my_tablets my_pills my_meds
        my_medication my_medicine my_own_tablets my_own_pills my_antidepressants my_adhd
        cold_medicine cold_and_flu flu_tablets cough_syrup cough_medicine my_painkillers
        my_anxiety mis_pastillas mi_medicina mis_medicinas mi_medicamento mi_pastilla vape
        edible edibles weed marihuana marijuana nicotine antihistamine my_vitamins
        grandmas_pills wifes_pills husbands_pills mums_tablets moms_pills dads_pills
        nans_tablets grans_tablets husbands_tablets wifes_tablets mothers_pills mothers_tablets
        fathers_pills fathers_tablets sleepers pastillas_de_mi pastilla_de_mi medicina_de_mi
        medicinas_de_mi clonazepam
        """,
    "wound": """
        wound wounds incision incisions cut scar stitch stitches staple staples suture sutures
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
        cone cones collar lampshade elizabethan e_collar ecollar e_cone donut doughnut comb
        inflatable recovery_suit onesie bodysuit surgical_suit buster_collar cono conos
        isabelino collarin campana embudo lampara_isabelina collar_isabelino conito lamp_shade
        of_shame cono_de_la_verguenza pantalla babero collar_de_la_verguenza medical_suit
        """,
    "food": """
        food kibble breakfast dinner lunch supper tea meal meals bowl biscuits biscuit plate
        grub chow treats treat chicken rice tuna wet_food dry_food dog_food cat_food nosh
        brekkie brekky bites bite mouthful mouthfuls portion portions comida croqueta croquetas
        croquetitas plato pollo pollito atun sobre sobrecito desayuno cena almuerzo lata arroz
        pienso alimento premio premios salchicha caldo cosa snack snacks din_dins dindins scraps
        scrap croquet ration ham cheese nibbles crunchies feed feeding turkey mince gravy bocado
        bocados cucharada churu tazon balanceado
        """,
    "water": "water agua aguita agüita",
    "good_state": "clean dry closed",
}
