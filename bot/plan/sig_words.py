"""The words of a sig, as patterns over lower-case text without accents (common practice)."""

from __future__ import annotations

from typing import Final, Literal

from bot.model.plan import Reason, Route

Unit = Literal["tablet", "chew", "capsule", "drop", "ml", "mg"]

NUMBER = (
    r"(?:\d+\s*(?:-|\s|y|and)\s*\d+\s*/\s*\d+|\d+\s*/\s*\d+|\d*[.,]\d+|\d+"
    r"|one and a half|half(?: a)?|one|two|three|una y media|media|medio|una|un|dos|tres)"
)
NUMBER_WORDS: Final = {
    "half": "1/2", "half a": "1/2", "media": "1/2", "medio": "1/2", "one": "1", "una": "1",
    "un": "1", "two": "2", "dos": "2", "three": "3", "tres": "3", "one and a half": "1 1/2",
    "una y media": "1 1/2",
}  # fmt: skip
UNITS: Final[tuple[tuple[str, Unit], ...]] = (
    (r"chew(?:able)?s?(?: tab(?:let)?s?)?|(?:tableta|tab)s? masticables?|masticables?", "chew"),
    (r"tab(?:let)?s?|tabletas?|comprimidos?|comps?|pastillas?|pills?|caplets?", "tablet"),
    (r"caps?(?:ules?)?|capsulas?", "capsule"),
    (r"drops?|gtts?|gotas?", "drop"),
    (r"ml|millilit(?:er|re)s?|mililitros?", "ml"),
    (r"mg|milligrams?|miligramos?", "mg"),
)
ROUTES: Final[tuple[tuple[str, Route], ...]] = (
    (r"po|p\.o\.|by mouth|orally|oral|vo|v\.o\.|(?:por )?via oral|por (?:la )?boca", "mouth"),
    (r"otm|oral transmucosal|on the gums|en las encias", "gums"),
    (r"topical(?:ly)?|topico|on the skin|en la piel", "skin"),
    (r"both eyes|ou|ambos ojos|en ambos ojos", "eyes"),
    (r"sc|sq|subq|under the skin|subcutane(?:ous(?:ly)?|o|a)", "injection"),
)
RATES: Final[tuple[tuple[str, int], ...]] = (
    (r"sid|s\.i\.d\.|qd|q\.d\.|once (?:a day|daily)|(?:una vez|1 vez) (?:al|por) dia|cada dia", 24),
    (
        r"bid|b\.i\.d\.|(?:twice|2 times|two times) (?:a day|daily)|(?:dos|2) veces (?:al|por) dia",
        12,
    ),
    (r"tid|t\.i\.d\.|(?:three|3) times (?:a day|daily)|(?:tres|3) veces (?:al|por) dia", 8),
    (r"qid|q\.i\.d\.|(?:four|4) times (?:a day|daily)|(?:cuatro|4) veces (?:al|por) dia", 6),
    (
        r"eod|qod|every (?:other|second) day|every two days|cada dos dias"
        r"|un dia si y (?:otro|uno) no",
        48,
    ),
    (r"once a week|weekly|una vez (?:por|a la) semana|semanal", 168),
    (r"daily|diario|diaria|1 ?x ?(?:/|a |per ) ?day", 24),
    (r"2 ?x ?(?:/|a |per ) ?day", 12),
    (r"3 ?x ?(?:/|a |per ) ?day", 8),
    (r"4 ?x ?(?:/|a |per ) ?day", 6),
    (r"(?:a|per) day|(?:al|por) dia", 24),
)
REFUSED: Final[tuple[tuple[str, str, str], ...]] = (
    (r"od", "OD may mean once a day or the right eye", "write SID or q24h, or name the eye"),
    (r"ud|u\.d\.|as directed|segun indicacion(?:es)?", "it does not say how to give it",
     "write amount and interval, as in 1 tab PO q12h"),
    (r"os|as|ad|au", "{} may be misread", "write the eye or ear in words"),
    (r"cc", "cc is easily misread", "write ml"),
    (r"hs|qhs", "{} may be misread", "write q24h, and the time in first_dose"),
    (r"iv|im", "{} is not given at home", "write how the owner gives it, such as PO"),
    (r"tsp|teaspoons?|cucharadit?as?|tbsp", "a spoon is no measure", "write ml"),
    (r"until (?:gone|finished|done)|hasta (?:terminar|acabar)(?:lo|la|los|las)?",
     "how many there are is not said", "write the number, as in until gone (20)"),
    (r"x ?\d+", "{}: days or doses is not said", "write it as in x 7d or x 14 doses"),
)  # fmt: skip
FOOD: Final = (
    r"with (?:food|meals?|a meal)|w/ ?food|c/ ?comida|con (?:las )?comidas?|con alimentos?"
)
PRN: Final = (
    r"prn|p\.r\.n\.|(?:only )?(?:as|if|when) needed|(?:solo )?si (?:es )?(?:necesario|hace falta)"
    r"|en caso (?:necesario|de)|segun necesidad|a demanda"
)
REASONS: Final[dict[Reason, str]] = {
    "pain": r"pain|dolor",
    "anxiety": r"anxiety|restlessness|ansiedad|inquietud",
    "nausea": r"nausea|vomiting|nauseas|vomitos?",
    "itch": r"itch(?:ing|iness)?|picor|picazon",
}
LEAD: Final = r"(?:(?:give|take|administer|dar|dele|de|administrar|tomar) )?"
COUNTS: Final = {"one": 1, "a": 1, "un": 1, "una": 1, "two": 2, "dos": 2}
