"""A dose that was noted of the wrong medicine: "no wait, that was the gabapentin"."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime

from bot.context.words import clock
from bot.household.giving import plainly
from bot.household.not_given import noted_lately
from bot.model.chart import Chart, Person
from bot.model.observation import Observation
from bot.model.reading import Reading

_MEANT = re.compile(
    r"^\W*(?:(?:no+|oops|ups|sorry|wait|hold on|hang on|actually|correction|my bad|i mean"
    r"|perdon|perdone|espera|espere|ay|uy|mentira|digo|correccion|me equivoque)\W+){1,4}"
    r"(?:(?:that|it|this) was|i meant|era|fue|quise decir|queria decir)\W+"
    r"(?:(?:only|just|the|her|his|la|el|su)\W+)*(?P<word>\w{4,})[ ]*(?P<rest>$|[.!;\n].*)",
    re.DOTALL,
)
"""What follows the medicine without a stop tells more: "it was the gabapentin he spat out"."""


def meant_another(
    chart: Chart, person: Person, text: str, reading: Reading, moment: datetime
) -> Reading:
    """The reading with the dose of the medicine that was meant, at the hour that was noted of the
    other, which is told as not given."""
    found = _MEANT.match(plainly(text))
    if found is None:
        return reading
    word = found["word"]
    meant = [one.name for one in chart.plan.medicines if plainly(one.name)[:4] == word[:4]]
    mine = [line for line in noted_lately(chart, moment) if line.person == person.id]
    wrong = [line for line in mine if line.item.med not in meant]
    if len(meant) != 1 or len(wrong) != 1 or wrong[0].at is None:
        return reading
    other = wrong[0].item.med
    plain = {("dose", "given", meant[0]), ("dose", "missed", other)}
    if any((one.about, one.value, one.med) not in plain for one in reading.observations):
        return reading  # more is told than which of them it was
    given = Observation("dose", "given", med=meant[0], at=clock(chart.local(wrong[0].at)))
    missed = Observation("dose", "missed", med=other)
    understood = reading.understood or not found["rest"].strip(" .!;\n")
    return replace(reading, observations=(given, missed), understood=understood)
