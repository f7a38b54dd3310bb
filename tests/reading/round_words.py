"""The words that ``dose_rounds`` puts together: every second one of a list belongs to the half
that nobody looks at. ``{n}`` is how many were due, in a word or a figure; ``{a}`` a medicine that
was given, ``{b}`` one that was not, ``{list}`` several, ``{rest}`` how many others there were."""

from __future__ import annotations

NAMES = {
    "carprofen": {
        "en": "carprofen; the carprofen; his carprofen; carprofen tablet; carpro; "
              "the anti-inflammatory",
        "es": "carprofeno; el carprofeno; su carprofeno; el antiinflamatorio",
    },
    "gabapentin": {
        "en": "gabapentin; the gabapentin; his gabapentin; gaba; the capsule; the pain one; "
              "the gaba; gabapentin capsule",
        "es": "gabapentina; la gabapentina; su gabapentina; la gaba; la cápsula; la del dolor",
    },
    "cephalexin": {
        "en": "cephalexin; the cephalexin; her cephalexin; the antibiotic; antibiotic; "
              "his antibiotics",
        "es": "cefalexina; la cefalexina; su cefalexina; el antibiótico; los antibióticos; "
              "antibiótico",
    },
    "meloxicam": {
        "en": "meloxicam; the meloxicam; the liquid; his meloxicam; the syrup; liquid",
        "es": "meloxicam; el meloxicam; el jarabe; el líquido; su jarabe; su meloxicam",
    },
    "trazodone": {
        "en": "trazodone; the trazodone; his trazodone; her trazodone",
        "es": "trazodona; la trazodona; su trazodona; la trazodona",
    },
}  # fmt: skip

EN = {
    "one": """given; its in; gave it; tablet's in; pill is down; down the hatch; he took it;
        had it; she's had it; swallowed; pill: done; meds done; in; she had her pill; gone down;
        popped it in; he ate his tablet; got it down him; gave her the pill; pill given""",
    "all": """all {n} in; {n} given; all given; gave all {n}; all down; they're all in;
        everything given; all of them swallowed; gave them all; meds: done; all his meds in;
        pills: done; all meds given; gave her all her pills; got them all down him;
        took the lot; the lot is in; all {n} gone; all {n} down the hatch; had all {n};
        everything's in; she took them all; he swallowed all of them; all her pills taken;
        gave all of them; meds are in; pills are all down; he had all his pills""",
    "both": """both in; both given; gave both; both down the hatch; he took both; both gone;
        both of them in; both pills swallowed; she had both; both done; gave him both;
        both meds given""",
    "repeat": "given; swallowed; administered; taken",
    "named": """{list} in; {list} given; gave {list}; gave her {list}; {list} down; {list} are in;
        {list}: done; {list} done; he took {list}; she had {list}; {list} both down the hatch;
        he swallowed {list}; got {list} down him; {list} swallowed""",
    "but": """all but {b}; everything except {b}; all given apart from {b}; gave all but {b};
        all in except {b}; given everything but {b}; all of them except {b};
        everything given but {b}; gave them all bar {b}; all down, all but {b}""",
    "yesno": """{a} yes, {b} no; {a} in, {b} not; {a} given, {b} refused; {a} done {b} no;
        gave {a} but not {b}; {a} down, {b} spat out; gave {a}, not {b}; {a} yes but {b} not yet;
        {a} went in, {b} he wouldn't take; {a} swallowed, {b} missed; no {b} but {a} given;
        {a} ok, {b} didn't""",
    "yesrest": """{a} yes, the other {rest} no; {a} in, others no; {a} given, not the other {rest};
        gave {a}, the rest no; {a} yes, the rest not; only {a}; just {a} given; only gave {a};
        just {a} so far; {a} done, the others not yet""",
    "norest": """{b} no, the other {rest} yes; {b} not, the rest in; {b} refused, others given;
        {b} spat out, the rest down; no {b}, the others given; {b} missed, gave the rest""",
    "place": """{a} one in; gave {a} one; only {a} one; {a} one given; {a} one down; {a} one is in;
        {a} pill given; just {a} one""",
    "placeno": """{a} one in, {b} one not; {a} one yes, {b} one no; gave {a} one, not {b} one;
        {a} one down, {b} one spat out; {a} one given, {b} one refused; {a} one done {b} one no""",
    "times": """{a} {t}, {b} {u}; {a} in {t} and {b} {u}; gave {a} {t}, {b} {u};
        {a} given {t}, {b} {u}; {a} {t} {b} {u}; gave {a} {t} and then {b} {u}""",
    "spat": """spat it out once then took it; spit it out first time but he swallowed it in the end;
        spat it once, then got it down; he spat it out twice then took it;
        first spat it out then ate it; spat once then took it""",
    "refused": """spit it out three times; spat it out; he spat it out every time; refused it;
        won't take it; spat it out twice; he keeps spitting it out; wouldn't take it""",
    "none": """havent given him anything just asking; not given anything yet; nothing given so far;
        haven't given her any; none given yet; have not given them; none of them given;
        not given any of them""",
    "half": """gave the half tablet; half tablet given; the half pill is in; gave half a tablet;
        he ate his half tablet; half tab in; she took the half; had his half pill;
        half a tablet down; gave him his half""",
    "partly": """only half of {b}; just half of {b} went in; half of {b} and he spat the rest;
        only got half of {b} in""",
    "fewer": """gave {k}; {k} in; {k} of them given; {k} down; gave him {k} of them; he took {k};
        {k} given; {k} swallowed""",
    "double": """gave two {a} instead of one; gave {a} twice; he ate the whole packet of {a};
        gave {a} then my husband gave it too; my wife had already given {a} and I gave it again;
        gave double {a}; double dose of {a}; gave {a} twice by mistake; he got two lots of {a};
        ate the whole box of {a}; two {a}, should have been one; gave {a} again by mistake;
        I gave {a} and so did my mum; gave two doses of {a}; gave her 2 {a} not one;
        he's eaten the whole bottle of {a}""",
    "doubleall": """gave them all twice; we both gave them; gave two, should have been one;
        double dose given; my husband had already given them and I gave them again;
        ate the whole box; gave everything twice by mistake; gave all of them again by mistake;
        he ate the whole packet; I gave them and so did my wife; he had two doses of everything;
        gave double by mistake""",
    "manner": """in cheese; hidden in pate; crushed in his food; with peanut butter; in ham;
        wrapped in chicken; with breakfast; with food; in a treat; in a bit of sausage; no fuss;
        no problem; with her brekkie; with his dinner""",
    "tail": """ate the lot; walked fine; thanks; ate all his dinner; good boy; 👍; thank you;
        no limp today; good girl; ate well; peed fine; sleeping now; he's happy; ate his breakfast;
        all good; drinking fine""",
    "head": "hi; yes; ok; yep; hello; morning; sorry im late; yes thanks",
    "now": "just now; right now; now; a minute ago",
    "first": "first; 1st", "second": "second; 2nd", "third": "third; 3rd", "last": "last; last",
}  # fmt: skip

ES = {
    "one": """dada; ya; se la di; ya se la di; ya la tomó; se la tomó; pastilla dada; ya está;
        se la comió; le di la pastilla; adentro; lista; tomada; ya se la tomó; puesta;
        pastilla: lista; se la tragó; ya la tragó""",
    "all": """ya las {n}; las {n} dadas; todas; ya todas; todas dadas; le di las {n};
        se las di todas; ya le di todo; se las tomó todas; pastillas: listas; todas adentro;
        ya se las di; se tomó las {n}; medicinas dadas; todo dado; ya están todas;
        se comió todas las pastillas; ya le di todas; las {n} tomadas; ya tomó todas;
        todas puestas; le di todas sus medicinas; se tragó las {n}; las {n} listas;
        todas sus pastillas dadas; ya le dimos todas""",
    "both": """las dos dadas; ya las dos; ambas dadas; le di las dos; se tomó las dos; le di ambas;
        las dos adentro; ambas listas; ya le di las dos; se tragó ambas; las dos tomadas;
        ambas tomadas""",
    "repeat": "dada; tomada; dadas; tragada",
    "named": """{list} ya; ya {list}; le di {list}; ya le di {list}; {list} dadas; se tomó {list};
        {list} listas; {list} sí; ya se tomó {list}; {list}: listo; le dimos {list};
        {list} ya dadas; se tragó {list}; {list} ya las tomó""",
    "but": """todo menos {b}; todas menos {b}; le di todo menos {b}; todas dadas excepto {b};
        ya le di todas menos {b}; todo excepto {b}; se tomó todas menos {b}; todas salvo {b};
        le di todas excepto {b}; todo dado menos {b}""",
    "yesno": """{a} sí, {b} no; le di {a} pero no {b}; {a} ya, {b} no; {a} dada {b} no;
        se tomó {a}, {b} no; {a} sí pero {b} todavía no; {a} ya, {b} la escupió;
        {a} dada, {b} no la quiso; {b} no, {a} sí; ya {a}, {b} no""",
    "yesrest": """{a} sí, las otras {rest} no; {a} ya, las demás no; solo {a}; nada más {a};
        solo le di {a}; le di {a}, las demás no; {a} dada, las otras no; ya {a}, el resto no;
        nomás le di {a}; solo {a} por ahora""",
    "norest": """{b} no, las otras {rest} sí; {b} no, las demás ya; {b} no la quiso, las demás sí;
        {b} no, el resto dadas; {b} la escupió, las otras sí; no le di {b}, las demás sí""",
    "place": """{a} ya; le di {a}; solo {a}; {a} dada; {a} ya está; nada más {a}; ya {a};
        ya se tomó {a}""",
    "placeno": """{a} sí, {b} no; {a} ya, {b} no; le di {a}, {b} no; {a} dada, {b} la escupió;
        {a} lista, {b} no; ya {a} pero {b} no""",
    "times": """{a} {t}, {b} {u}; {a} {t} y {b} {u}; le di {a} {t} y {b} {u};
        {a} ya {t}, {b} {u}; ya {a} {t}, {b} {u}; {a} dada {t} y {b} {u}""",
    "spat": """la escupió una vez y luego se la tomó; primero la escupió pero ya se la tomó;
        la escupió y al final se la tragó; la escupió dos veces y luego se la comió;
        la escupió una vez, luego ya; escupió una vez y después la tomó""",
    "refused": """la escupió tres veces; no la quiso; la escupió; no se la quiso tomar;
        la escupe cada vez; escupió la pastilla; la escupió dos veces; no quiso tomarla""",
    "none": """no le he dado nada solo pregunto; todavía no le doy nada; aún no se las doy;
        no le he dado ninguna; no le he dado ninguna de las pastillas; todavía no le he dado;
        no se las he dado""",
    "half": """se comió la media pastilla; le di la media; media pastilla dada; le di su media;
        media tableta dada; se tomó la media; le di media pastilla; ya la media;
        se tomó su media tableta; la media ya""",
    "partly": """solo la mitad de {b}; nada más la mitad de {b}; se tomó la mitad de {b};
        solo le di la mitad de {b}""",
    "fewer": """le di {k}; ya {k}; se tomó {k}; {k} dadas; {k} de ellas; solo {k}; {k} ya;
        nomás {k}""",
    "double": """le di dos veces {a}; le di doble {a}; se comió la caja entera de {a};
        le di {a} y mi esposo también se la dio;
        mi esposa ya le había dado {a} y yo se la di otra vez;
        le di dos {a} en vez de una; le di {a} otra vez por error; le di dos dosis de {a};
        se comió todo el frasco de {a}; le di {a} y mi hija se la volvió a dar;
        doble dosis de {a}; le di dos de {a}, era una""",
    "doubleall": """le di todas dos veces; los dos se las dimos; le di dos, era una;
        doble dosis de todo; mi esposo ya se las había dado y yo se las di otra vez;
        se comió la caja entera; le di todas otra vez por error; se comió todo el frasco;
        se las di y mi esposa también; le di todo doble""",
    "manner": """en queso; con jamón; escondidas en paté; con el desayuno; con comida; molida;
        en pollo; con su cena; con crema de cacahuate; sin problema; en salchicha; fácil""",
    "tail": """gracias; comió todo; caminó bien; buen niño; muchas gracias; comió bien; 👍;
        todo bien; hizo pipí bien; está contento; ya duerme; se acabó el plato""",
    "head": "hola; sí; ok; buenas noches; perdón la demora; sí gracias",
    "now": "ahorita; ahora mismo; hace un momento; recién",
    "first": "la primera; la 1ra", "second": "la segunda; la 2da", "third": "la tercera; la 3ra",
    "last": "la última; la última",
}  # fmt: skip

CLOCKS = {
    "evening": {
        "en": "at 8=20:00; half 8=20:30; at 8:15=20:15; quarter past 8=20:15; at eight=20:00; "
              "8.20=20:20; around 8=20:00; at ten past 8=20:10; 8pm=20:00; "
              "twenty minutes ago=20:20; "
              "at half 8=20:30; about 20:05=20:05",
        "es": "a las 8=20:00; a las 8 y cuarto=20:15; a las ocho=20:00; a las 8:10=20:10; "
              "como a las 8=20:00; a las 8 y media=20:30; a las 20:05=20:05; "
              "hace 20 minutos=20:20; "
              "8 pm=20:00; a las 8 en punto=20:00",
    },
    "morning": {
        "en": "at 8=08:00; half 8=08:30; at 8:15=08:15; quarter past 8=08:15; at eight=08:00; "
              "8.20=08:20; around 8=08:00; 8am=08:00; at ten past 8=08:10; "
              "twenty minutes ago=08:20",
        "es": "a las 8=08:00; a las 8 y cuarto=08:15; a las ocho=08:00; a las 8:10=08:10; "
              "como a las 8=08:00; a las 8 y media=08:30; 8 am=08:00; hace 20 minutos=08:20",
    },
}  # fmt: skip
