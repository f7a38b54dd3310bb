"""Chat in which nothing is told of the patient: ordinary words, names and errands, put together
anew; and sentences that mean nothing. The same on every run."""

from __future__ import annotations

from collections.abc import Iterator

from bot.model.urgency import Urgency

from .dice import Dice
from .rows import Labelled

COUNT = 2000
_NAMES = """
sandra samantha sabrina sara sergio sam carla carlos marcela marco maria mario nadia natalia
nancy noemi nora pablo paula pedro penny peter petra paloma olivia omar oscar rita roberto rosa
roger ruth tania tatiana tim tom tony veronica victor vivian wendy brenda bruno barbara blanca
celeste claudia cristina cynthia daniela david diana elena emma esther fabian felipe fiona
gabriel gemma gloria graham hannah hector helen hugo irene isabel ivan jack jaime janet jenny
joe jorge julia karen kevin laura leo leticia lucas luis lydia manuel marta megan melissa
miguel milly monica rebecca ricardo saul scarlett selina stella susana sylvia violet hazel
amber sangita sanjay anders andres alejandra alba alma angela ben beatriz belinda
""".split()  # fmt: skip
_WORDS = {
    "en": (
        "thing thing stuff paper box key car shop bag book door chair table phone letter park"
        " street house garden bus film game cake photo card bill money shirt shoe coat window"
        " kitchen school office work news song plan list colour picture parcel blanket bowl toy"
        " sofa lamp neighbour brother sister daughter son uncle lady man friend boss teacher",
        "did took put got brought lost found sold made saw told sent gave left moved painted"
        " called wanted asked needed washed read fixed bought kept cleaned opened closed",
        "blue purple green yellow white black red new old big small nice funny strange dead cold"
        " broken bent wet open heavy long short soft hard bad good pale swollen stuck loose tight",
        "the a my your his her that this some our",
        "today tomorrow yesterday later again too already maybe on|monday at|noon last|week"
        " this|morning next|time for|now in|the|end you|know i|think full|stop lol haha mate",
    ),
    "es": (
        "cosa cosa papel caja llave carro tienda bolsa libro puerta silla mesa teléfono carta"
        " parque calle casa jardín camión película juego pastel foto tarjeta cuenta dinero camisa"
        " zapato abrigo ventana cocina escuela oficina trabajo noticia canción plan lista color"
        " paquete cobija plato juguete sillón lámpara vecina hermano hermana hija hijo tío señora",
        "hizo tomó puso trajo perdió encontró vendió vio dijo mandó dio dejó movió pintó llamó"
        " quería pidió lavó leyó arregló compró guardó limpió abrió cerró cuenta dice lleva trae",
        "azul morado verde amarillo blanco negro rojo nuevo viejo grande chico bonito raro muerto"
        " frío roto doblado mojado abierto pesado largo corto duro malo bueno pálido flojo",
        "el la mi su ese esa una un nuestra aquella",
        "hoy mañana ayer luego otra|vez también ya quizás el|lunes al|rato la|semana|pasada"
        " ahorita entonces de|nada ni|modo pues punto jaja verdad como|siempre allá",
    ),
}
_MORE = {
    "en": """
    every each with for from about over under behind before after again around away back because
    carry catch change climb count cross cut drive drop eat fall feel fill fly follow get give go
    green grey floor wall roof corner hall stairs yard road bridge river field tree leaf stone sand
    glass cup plate fork pan pot tin jar towel sheet pillow carpet curtain shelf drawer basket rope
    string wire tape glue nail screw hammer brush bucket hose soap shower bath sink tap oven fridge
    tv radio laptop charger battery keys wallet purse ring watch hat scarf glove boot sock belt
    left right front side top bottom middle edge end half whole piece bit lot few many most any
    morning evening night minute hour week month birthday holiday trip flight train taxi bike
    loud quiet quick slow early late empty full clean dirty dark bright warm cool sweet sour round
    flat straight sharp smooth rough thick thin tall tiny huge heavy light rusty dusty lost found
    came went took gave kept held hit ran sat stood fell broke cut hung pulled pushed turned
    dropped picked carried spilled cooked burnt mixed poured folded washed dried fixed lent owed
    milk bread rice soup cheese chicken apple lemon sugar salt coffee tea beer wine water ice
    """,
    "es": """
    cada con sin para por desde hasta sobre bajo tras antes después entonces aunque porque donde
    cargó halló vendió soltó jaló empujó cruzó subió bajó corrió cayó rompió cortó colgó dobló
    verde gris café rosa claro oscuro piso pared techo esquina pasillo escalera patio camino puente
    río campo árbol hoja piedra arena vidrio taza plato tenedor olla lata frasco toalla sábana
    almohada tapete cortina repisa cajón canasta cuerda hilo alambre cinta clavo tornillo martillo
    cepillo cubeta manguera jabón regadera tina llave horno refrigerador tele radio cargador pila
    cartera anillo reloj gorra bufanda guante bota calcetín cinturón izquierda derecha frente lado
    arriba abajo medio orilla punta mitad entero pedazo montón varios muchos pocos ninguno tarde
    minuto hora semana mes cumpleaños viaje vuelo tren taxi bici ruidoso callado rápido lento
    temprano vacío lleno limpio sucio tibio fresco dulce agrio redondo plano derecho filoso liso
    grueso delgado alto chiquito enorme ligero oxidado perdido leche pan arroz sopa queso pollo
    manzana limón azúcar sal cerveza vino agua hielo prestó debía revolvió sirvió quemó secó llegó
    """,
}
"""Words that stand in alarms as well, where they mean no harm by themselves."""
_ERRANDS = {
    "en": "tell {n} the {w} is {a}|{n} will write from now on|is {n} in on friday|{n} says hello|"
    "thats {n} at the door|thanks {n}|hi its {n}, new phone|ask {n} about the {w}|{n} and {m}|"
    "sorry wrong chat that was for {n}|my neighbour {n} lent us the {w}|give {n} the {a} {w}|"
    "{n} {v} the {w} {t}|nobody {v} {p} {w}|who is {n}|{n}|{n} {n}|{p} {a} {w}|{w} {w} {w}|"
    "what time does {n} open|where do i leave the {w}|can {n} pick up the {w}|tell {n}",
    "es": "dile a {n} lo de {p} {w}|{n} va a escribir desde hoy|está {n} el viernes|{n} saluda|"
    "gracias {n}|hola soy {n}, cambié de número|pregúntele a {n} por {p} {w}|{n} y {m}|"
    "perdón, eso era para {n}|mi vecina {n} nos prestó {p} {w}|dígale a {n}|{n}|lo de {n}|"
    "{n} {v} {p} {w} {t}|nadie {v} nada|nadie me {v} {p} {w}|quién es {n}|{p} {w} {a}|"
    "a qué hora abre {n}|dónde dejo {p} {w}|puede {n} pasar por {p} {w}|con {n}|nada de nada",
}
_SHAPES = ("p a w v p w", "p w v p w t", "t p w v", "p w v t", "v p w", "w v w", "p w w v p a w",
           "n v p w", "p w n v w t", "v w a n t", "p a a w", "w t")  # fmt: skip
_NONSENSE = tuple("blorp zibble flumox zonk quib trefa morluz pinga tazzle gribo wug dax".split())
_ASKED = ("none",) * 7 + ("general", "dose", "incision", "walk", "mobility", "appetite", "bathroom")


def idle() -> Iterator[Labelled]:
    """Replies that tell nothing of the patient, each text once."""
    seen: set[str] = set()
    for seed in range(COUNT):
        dice = Dice(seed)
        lang = ("en", "es")[seed % 2]
        text = _chat(lang, dice)
        if text in seen:
            continue
        seen.add(text)
        day = 2 + seed % 19
        asked, species = dice.of(_ASKED), dice.of(["dog", "dog", "cat"])
        yield Labelled(text, asked, species, day, lang, Urgency.next_day, frozenset())


def chat(lang: str, seed: int) -> str:
    """One such reply."""
    return _chat(lang, Dice(seed))


def _chat(lang: str, dice: Dice) -> str:
    if dice.of("abc") == "a":
        words = [dice.of(_MORE[lang].split()) for _ in range(1 + dice.below(6))]
        return " ".join([*words, *(dice.of(_NAMES) for _ in range(dice.below(3)))])
    shape = dice.of(_forms(lang))
    nouns, verbs, adjectives, articles, times = (part.split() for part in _WORDS[lang])
    kinds = {"w": nouns, "v": verbs, "a": adjectives, "p": articles, "t": times, "n": _NAMES}
    kinds["m"] = _NAMES
    while "{" in shape:
        at = shape.index("{")
        kind = shape[at + 1]
        word = dice.of(kinds[kind]).replace("|", " ")
        if kind == "w" and dice.of("abcdefgh") == "a":
            word = dice.of(_NONSENSE)
        shape = f"{shape[:at]}{word}{shape[at + 3 :]}"
    return shape


def _forms(lang: str) -> list[str]:
    """Errands, and bare strings of words, as often."""
    strings = [" ".join(f"{{{kind}}}" for kind in one.split()) for one in _SHAPES]
    return [*_ERRANDS[lang].split("|"), *strings, *strings]
