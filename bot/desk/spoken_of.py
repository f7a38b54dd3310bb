"""Which of the plan's medicines staff's own words speak of: by name, by what they are for, or
all of them ("his pills", "give both", "lo de siempre")."""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

from bot.model.chart import Chart
from bot.model.plan import Medicine
from bot.standing.medicines import is_anti_inflammatory, relieves_pain

_NOUN: Final = (
    r"(?:pills?|tablets?|capsules?|drops|meds?|medicines?|medications?|doses?|liquids?|chews?"
    r"|pastillas?|tabletas?|c[aá]psulas?|gotas|jarabe|medicinas?|medicamentos?|remedios?|dosis)"
)
_CLASSES: Final[tuple[tuple[re.Pattern[str], Callable[[Medicine], bool]], ...]] = (
    (re.compile(r"\b(anti-? ?inflam\w+|nsaids?|desinflamatori\w+)\b", re.I), is_anti_inflammatory),
    (
        re.compile(
            rf"\b(pain-? ?(killers?|relie\w+|{_NOUN})|analg[eé]sic\w+|calmantes?"
            rf"|{_NOUN} (para el|del|de|for (the |his |her )?) ?(dolor|pain))\b",
            re.IGNORECASE,
        ),
        relieves_pain,
    ),
    (re.compile(r"\bantib\w+\b", re.I), lambda one: one.kind == "antibiotic"),
)
_ANY: Final = re.compile(rf"\b{_NOUN}\b", re.IGNORECASE)
_ALL: Final = (
    r"\b(everything|both|all|the (usual|rest|others?|same)|as (usual|before|always|planned)|them|it"
    r"|tod[oa]s?|amb[oa]s|l[oa]s dos|lo (de siempre|mismo|dem[aá]s)|como (siempre|antes)"
    r"|(d[eé]|d[aá]r?)sel[oa]s?|d[eé]l[oa]s?)\b"
)
_GIVE: Final = (
    r"\b(give|giving|gave|continue|keep (on )?(giving|going)|go on|carry on|resume|restart|start"
    r"|take|d[eé](le|n(le)?|sel[oa]s?|l[oa]s?)?|d[aá](r|ndo)(le|sel[oa]s?)?|siga|sigan|contin[uú]e"
    r"|reanude|vuelva a|tome|puede dar\w*)\b"
)
_GIVE_ALL: Final = re.compile(rf"(?=[^.!?\n]*{_GIVE}[^.!?\n]{{0,30}}?{_ALL})", re.IGNORECASE)
"""A word for all speaks of medicines only after a word of giving, in one sentence."""


def spoken_of(text: str, chart: Chart) -> list[str]:
    """The names in the plan; every one where the words leave it open which."""
    meds, plain = chart.plan.medicines, text.casefold()
    found = [one.name for one in meds if one.name.casefold() in plain]
    for words, fits in _CLASSES:
        if words.search(text):
            found += [one.name for one in meds if fits(one)]
    if not found and (_ANY.search(text) or _GIVE_ALL.search(text)):
        found = [one.name for one in meds]
    return list(dict.fromkeys(found))
