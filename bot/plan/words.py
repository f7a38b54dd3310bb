"""The words of this room, in both languages."""

from __future__ import annotations

from datetime import datetime

from bot.model.plan import Hours, Medicine
from bot.model.protocol import Choice, Note
from bot.model.text import Text

from .plain import plain

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
NOT_TOLD = Text(
    en="When the last dose of {name} was given in hospital is not known.",
    es="No se sabe cuándo se dio en el hospital la última dosis de {name}.",
)

_DOSE = Text(en="Give {name}: {amount}.", es="Dé {name}: {amount}.")
_DOSE_WITH_FOOD = Text(
    en="Give {name}: {amount}, with food.", es="Dé {name}: {amount}, con comida."
)


def dose_text(medicine: Medicine, hours: Hours, at: datetime, last: datetime | None) -> Text:
    """What the owner is asked to give at ``at``, as the clinician ordered it.

    An order in figures is told in plain words, with the household's own meals and until
    when (``last``); an order in words, in its own. Times are on the household's clock.
    """
    if medicine.in_figures:
        english = plain(medicine, hours, "en", at=at, last=last)
        spanish = plain(medicine, hours, "es", at=at, last=last)
        words = _DOSE
    else:
        english, spanish = medicine.amount.en, medicine.amount.es
        words = _DOSE_WITH_FOOD if medicine.with_food else _DOSE
    return words.fill(
        {"name": medicine.name, "amount": english}, {"name": medicine.name, "amount": spanish}
    )
