"""The words of this room, in both languages."""

from __future__ import annotations

from bot.model.plan import Medicine
from bot.model.protocol import Choice, Note
from bot.model.text import Text

DOSE_CHOICES = (
    Choice(
        id="given",
        label=Text(en="Given", es="Ya se la di"),
        notes=(Note(about="dose", value="given"),),
    ),
    Choice(
        id="refused",
        label=Text(en="Refused it", es="No la quiso"),
        notes=(Note(about="dose", value="refused"),),
    ),
    Choice(
        id="missed",
        label=Text(en="Could not give it", es="No pude dársela"),
        notes=(Note(about="dose", value="missed"),),
    ),
)
"""The buttons under a dose."""

CLOSE = Text(
    en="Two doses of {name} are written down closer together than the plan allows.",
    es="Hay dos dosis de {name} anotadas con menos tiempo entre ellas del que permite el plan.",
)
AHEAD = Text(
    en="The last dose of {name} does not fit any of its times.",
    es="La última dosis de {name} no corresponde a ninguno de sus horarios.",
)
SHIFTED = Text(
    en="The last dose of {name} was so late that the next one would come too late as well.",
    es="La última dosis de {name} se dio tan tarde que la siguiente también se atrasaría mucho.",
)
LATE = Text(
    en="It is too late for this dose of {name}, or the next one would come too close.",
    es="Es demasiado tarde para esta dosis de {name}, o la siguiente quedaría muy seguida.",
)

_DOSE = Text(en="Give {name}: {amount}.", es="Dé {name}: {amount}.")
_DOSE_WITH_FOOD = Text(
    en="Give {name}: {amount}, with food.", es="Dé {name}: {amount}, con comida."
)


def dose_text(medicine: Medicine) -> Text:
    """What the owner is asked to give, as the clinician ordered it."""
    words = _DOSE_WITH_FOOD if medicine.with_food else _DOSE
    return words.fill(
        {"name": medicine.name, "amount": medicine.amount.en},
        {"name": medicine.name, "amount": medicine.amount.es},
    )
