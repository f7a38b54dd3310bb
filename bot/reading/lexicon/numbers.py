"""Number words, units of time, length and heat, and ways of saying how often."""

from __future__ import annotations

NUMBERS: dict[str, float] = {}
for _line in (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
    "fifteen sixteen seventeen eighteen nineteen twenty",
    "cero uno dos tres cuatro cinco seis siete ocho nueve diez once_es doce trece catorce quince "
    "dieciseis diecisiete dieciocho diecinueve veinte veintiuno veintidos veintitres "
    "veinticuatro veinticinco veintiseis veintisiete veintiocho veintinueve",
):
    NUMBERS.update({word: float(value) for value, word in enumerate(_line.split())})
NUMBERS.update(
    {"un": 1.0, "una": 1.0, "a": 1.0, "an": 1.0, "fourty": 40.0, "veintiun": 21.0, "once_es": 11.0}
)
TENS = {
    word: float(20 + 10 * index)
    for line in (
        "twenty thirty forty fifty sixty seventy eighty ninety",
        "veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa",
    )
    for index, word in enumerate(line.split())
}
NUMBERS.update(TENS)
for _ten, _value in list(TENS.items()):
    if _ten.endswith("a"):  # "treintaiuno", typed as one word
        for _unit in "uno dos tres cuatro cinco seis siete ocho nueve un una".split():
            NUMBERS[f"{_ten}i{_unit}"] = _value + NUMBERS[_unit]
HUNDREDS = {"hundred": 100.0, "cien": 100.0, "ciento": 100.0, "doscientos": 200.0,
            "doscientas": 200.0, "trescientos": 300.0, "thousand": 1000.0, "mil": 1000.0,
            "quinientos": 500.0}  # fmt: skip
HALVES = {"half": 0.5, "medio": 0.5, "media": 0.5, "quarter": 0.25, "cuarto": 0.25,
          "cuartito": 0.25, "mitad": 0.5, "third": 1 / 3, "tercio": 1 / 3}  # fmt: skip
VAGUE = {"couple": 2.0, "few": 3.0, "several": 3.0, "par": 2.0, "varias": 3.0, "varios": 3.0,
         "unas": 2.0, "unos": 2.0, "multiple": 3.0, "many": 3.0, "muchas": 3.0, "various": 3.0,
         "pocas": 2.0, "pocos": 2.0, "numerous": 3.0, "dozen": 12.0}  # fmt: skip

UNITS: dict[str, tuple[str, float]] = {}
for _words, _class, _factor in (
    ("minute minutes min mins minuto minutos minutito minutitos minuts minite", "minutes", 1.0),
    ("second seconds sec secs segundo segundos segs", "seconds", 1.0),
    ("hour hours houres hora horas h horitas horita hs", "hours", 1.0),
    ("day days dia dias night nights noche noches diitas", "hours", 24.0),
    ("week weeks semana semanas semanita", "hours", 168.0),
    ("metre metres meter meters metro metros mts mtrs metritos", "metres", 1.0),
    ("m", "metres", 1.0),
    ("yard yards yd yds yarda yardas", "metres", 0.9144),
    ("foot feet ft pie pies", "metres", 0.3048),
    ("mile miles milla millas mi", "metres", 1609.344),
    ("km kms kilometre kilometres kilometer kilometers kilometro kilometros", "metres", 1000.0),
    ("mm cm inch inches in centimetre centimetres centimeter centimeters centimetro centimetros "
     "milimetro milimetros pulgada pulgadas", "size", 1.0),
    ("ml mg mls kg kilo kilos lb lbs pounds grams gramos", "amount", 1.0),
    ("degrees degree grados grado celsius centigrados centigrade c fahrenheit f deg gr", "heat",
     1.0),
    ("time times vez veces occasion occasions", "times", 1.0),
):  # fmt: skip
    for _word in _words.split():
        UNITS[_word] = (_class, _factor)

ONCE = {
    "once": 1.0, "twice": 2.0, "thrice": 3.0, "repeatedly": 3.0, "repetidamente": 3.0,
    "constantly": 3.0, "constantemente": 3.0, "continuously": 3.0,
}  # fmt: skip

ORDINALS = {
    "second": 2.0, "third": 3.0, "fourth": 4.0, "fifth": 5.0, "sixth": 6.0, "2nd": 2.0,
    "3rd": 3.0, "4th": 4.0, "segunda": 2.0, "tercera": 3.0, "cuarta": 4.0, "quinta": 5.0,
}  # fmt: skip
"""Before "time", "vez": how often until now."""

CLASSES = {
    "number": "",
    "rapidrate": "",  # a number that may be breaths in a minute: 46 to 200
    "three": "bunch handful several triple varias puno monton",  # and every number from 3
    "numberword": " ".join(word for word in NUMBERS if len(word) > 3),
    "minutes": "",
    "hours": "",
    "metres": "",
    "size": "",
    "amount": "",
    "heat": "",
    "clock": "",
    "times": "",
    "seconds": "",
    # Since when, as hours before now; worked out with the time of the reply.
    "sinceword": "since desde",
    "yesterdaynoon": "yesterday_lunch yesterday_lunchtime yesterday_noon yesterday_midday ayer_al_mediodia "
    "ayer_a_mediodia yesterday_dinnertime",
    "lastnight": "last_night last_nights last_nite lastnight anoche overnight all_night whole_night through_the_night "
    "toda_la_noche during_the_night in_the_night all_nite durante_la_noche",
    "yesterday": "yesterday ayer",
    "yesterdaymorning": "yesterday_morning ayer_a_la_manana ayer_tempranito ayer_de_manana ayer_por_la_mana ayer_desayuno ayer_en_la_manana ayer_por_la_manana ayer_temprano",
    # A part of the day counts from its beginning: doubt makes it longer, never shorter.
    "yesterdayafternoon": "ayer_a_la_tarde ayer_tarde yesterday_afternoon ayer_en_la_tarde "
    "ayer_por_la_tarde",
    "yesterdayevening": "ayer_a_la_noche ayer_noche yesterday_evening ayer_en_la_noche "
    "ayer_por_la_noche yesterday_night",
    "daybefore": "day_before_yesterday antier anteayer antes_de_ayer antenoche the_night_before_last night_before_last evening_before_last day_before_last "
    "afternoon_before_last anteanoche antes_de_anoche antier_en_la_noche",
    "thismorning": "this_morning this_mornings esta_manana en_la_manana breakfast desayuno amanecio "
    "in_the_morning por_la_manana la_manana",
    "allday": "all_day whole_day todo_el_dia all_day_long en_todo_el_dia today hoy",
    "surgery": "surgery operation op cirugia operacion surgery_day operaron operado operada "
    "came_home got_home home llego llegamos homecoming discharge_day discharged",
    "tempword": "temp temps temperature thermometer fever temperatura termometro fiebre "
    "calentura febrile pyrexia pyrexic rectal febril rectally pirexia pyretic t",
    "againword": "again otra_vez de_nuevo nuevamente both_times in_a_row seguidas seguidos running "
    "las_dos_veces also_this_morning and_this_morning and_tonight y_hoy ambas_veces both_doses",
    "manytimes": "over_and_over again_and_again every_hour every_few_minutes every_few_mins a_few_times "
    "several_times many_times lots_of_times loads_of_times multiple_times nonstop cada_rato "
    "a_cada_rato una_y_otra_vez keeps keep every_couple_of_minutes varias_veces muchas_veces "
    "sigue sin_parar no_para no_deja on_repeat cada_hora todo_el_tiempo",
}
