"""Staff's own words that ask an owner to wait with a medicine: what is then on hold."""

from __future__ import annotations

import re

from bot.model.chart import Case, Chart
from bot.model.hold import ByMouth, HeldMedicine, Target

_WAIT = re.compile(
    r"\b(no more|no further|stop(?: giving)?|do(?: not|n.t) give|hold(?: off)?|skip|wait with"
    r"|not give|withhold|no le d[eé]|no d[eé]|deje de dar|suspenda|no m[aá]s|espere con)\b",
    re.IGNORECASE,
)
_ALL = re.compile(r"\b(medicines?|medications?|meds|pills?|medicinas?|pastillas?)\b", re.IGNORECASE)
_GOES_ON = re.compile(
    r"\b(do(?: not|n.t) stop|keep giving|go on (?:giving|with)|no deje de dar|siga dando)\b",
    re.IGNORECASE,
)


_BY_MOUTH = re.compile(
    r"\b(nothing (?:more )?by mouth|nothing (?:in|into|through) (?:the|his|her|its) mouth|npo"
    r"|no food(?:,| and| or) (?:no )?(?:water|medic|meds|pills)"
    r"|nada (?:m[aá]s )?por (?:la )?boca|ni comida ni (?:agua|medicinas?|pastillas?)|en ayunas)\b",
    re.IGNORECASE,
)


def asked_to_wait(text: str, chart: Chart, case: Case | None) -> tuple[Target, ...]:
    """What these words ask to wait with: everything by mouth, or medicines. In doubt more,
    never less: a clinician releases it with one tap."""
    if _BY_MOUTH.search(text):
        return (ByMouth(),)
    if not _WAIT.search(text) or _GOES_ON.search(text):
        return ()
    plain = text.casefold()
    named = [m.name for m in chart.plan.medicines if m.name.casefold() in plain]
    if named:
        return tuple(HeldMedicine(name) for name in named)
    return meant(chart, case) if _ALL.search(text) else ()


def meant(chart: Chart, case: Case | None) -> tuple[Target, ...]:
    """The medicines that a case is about; every one where it names none."""
    entries = case.body.get("entries", []) if case is not None else []
    told = {str(seen.get("med", "")).casefold() for one in entries for seen in one["seen"]}
    names = [m.name for m in chart.plan.medicines]
    about = [name for name in names if name.casefold() in told]
    return tuple(HeldMedicine(name) for name in about or names)
