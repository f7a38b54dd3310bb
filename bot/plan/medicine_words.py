"""What is said to the clinician about an order that differs from the medicines table."""

from __future__ import annotations

from typing import Final, Literal

from bot.model.text import Text

FindingKind = Literal[
    "over", "under", "day_over", "day_under", "interval", "gap", "long", "short", "light",
    "species", "avoid", "human", "together", "split", "use", "route", "unknown", "misspelt",
    "slip", "no_dose", "unwritten", "jump",
]  # fmt: skip
NOTES: Final[frozenset[FindingKind]] = frozenset({"use"})
"""Told, but nothing to confirm. What could not be checked is confirmed like what differs:
somebody must have looked at it."""

WHAT: Final[dict[FindingKind, Text]] = {
    "over": Text(
        en="{name}: {dose} is {ratio} for {weight}, more than {percent} % over the stated "
        "{printed} every {every} h ({high} here; {source})",
        es="{name}: {dose} son {ratio} para {weight}, más de un {percent} % por encima de lo "
        "indicado, {printed} cada {every} h (aquí {high}; {source})",
    ),
    "under": Text(
        en="{name}: {dose} is {ratio} for {weight}, more than {percent} % under the stated "
        "{printed} every {every} h ({low} here; {source})",
        es="{name}: {dose} son {ratio} para {weight}, más de un {percent} % por debajo de lo "
        "indicado, {printed} cada {every} h (aquí {low}; {source})",
    ),
    "day_over": Text(
        en="{name}: {daily} in 24 h is {ratio} for {weight}, over what is stated for a day, "
        "{printed} ({high} here; {source})",
        es="{name}: {daily} en 24 h son {ratio} para {weight}, por encima de lo indicado por "
        "día, {printed} (aquí {high}; {source})",
    ),
    "day_under": Text(
        en="{name}: {daily} in 24 h is {ratio} for {weight}, under what is stated for a day, "
        "{printed} ({low} here; {source})",
        es="{name}: {daily} en 24 h son {ratio} para {weight}, por debajo de lo indicado por "
        "día, {printed} (aquí {low}; {source})",
    ),
    "interval": Text(
        en="{name}: every {ordered} h is not a stated interval; stated is every {stated} h "
        "({source})",
        es="{name}: cada {ordered} h no es un intervalo indicado; se indica cada {stated} h "
        "({source})",
    ),
    "gap": Text(
        en="{name}: two doses may come as close as {gap} h; stated is at least {stated} h apart "
        "({source})",
        es="{name}: dos dosis pueden quedar a {gap} h; se indican al menos {stated} h entre dosis "
        "({source})",
    ),
    "long": Text(
        en="{name}: {ordered} days is longer than the {stated} days stated ({source})",
        es="{name}: {ordered} días es más que los {stated} días indicados ({source})",
    ),
    "short": Text(
        en="{name}: {ordered} days is shorter than the {stated} days stated at least ({source})",
        es="{name}: {ordered} días es menos que los {stated} días indicados como mínimo ({source})",
    ),
    "light": Text(
        en="{name}: {weight} is below {stated}, the lightest patient it is stated for ({source})",
        es="{name}: {weight} es menos de {stated}, el peso mínimo indicado ({source})",
    ),
    "species": Text(
        en="{name}: no dose for a {species} is in the medicines table; it has one for a {others} "
        "({source})",
        es="{name}: la tabla de medicamentos no tiene dosis para {species}; la tiene para "
        "{others} ({source})",
    ),
    "avoid": Text(en="{name}: {why} ({source})", es="{name}: {why} ({source})"),
    "human": Text(
        en="{name} is a medicine for people; no dose for a {species} is in the medicines table "
        "({source})",
        es="{name} es un medicamento para personas; la tabla no tiene dosis para {species} "
        "({source})",
    ),
    "together": Text(
        en="{name} and {other} are in one order: {why} ({source})",
        es="{name} y {other} están en la misma orden: {why} ({source})",
    ),
    "split": Text(
        en="{name}: {amount}, but {why} ({source})", es="{name}: {amount}, pero {why} ({source})"
    ),
    "use": Text(
        en="{name}: the dose is stated for {why} ({source})",
        es="{name}: la dosis está indicada para {why} ({source})",
    ),
    "route": Text(
        en="{name} is not given by mouth, and the medicines table holds doses by mouth: its dose "
        "was not checked",
        es="{name} no se da por la boca y la tabla solo tiene dosis por boca: su dosis no se "
        "comprobó",
    ),
    "unknown": Text(
        en="{name} is not in the medicines table: nothing was checked",
        es="{name} no está en la tabla de medicamentos: no se comprobó nada",
    ),
    "misspelt": Text(
        en="{name} is not in the medicines table, but {near} is: nothing was checked",
        es="{name} no está en la tabla de medicamentos, pero {near} sí: no se comprobó nada",
    ),
    "slip": Text(
        en="{name}: the medicines table spells it {near}",
        es="{name}: en la tabla de medicamentos se escribe {near}",
    ),
    "no_dose": Text(
        en="the medicines table holds no dose of {name}: its dose was not checked",
        es="la tabla no tiene ninguna dosis de {name}: su dosis no se comprobó",
    ),
    "jump": Text(
        en="{name}: {measure} would go from {before} to {after}, a change of more than {times} "
        "times",
        es="{name}: {measure} pasaría de {before} a {after}, un cambio de más de {times} veces",
    ),
    "unwritten": Text(
        en="{name}: the order has no figures, so its dose was not compared with the stated "
        "{printed} every {every} h ({source})",
        es="{name}: la orden no tiene cifras, así que su dosis no se comparó con lo indicado, "
        "{printed} cada {every} h ({source})",
    ),
}

CONFIRM: Final = Text(
    en="Change the order, or let a clinician confirm it",
    es="Cambie la orden, o que un clínico la confirme",
)
BY_HAND: Final = Text(
    en="Check the dose by hand; a clinician confirms it",
    es="Compruebe la dosis a mano; un clínico la confirma",
)
MEND: Final[dict[FindingKind, Text]] = {
    "unknown": Text(
        en="Check the spelling, and the dose by hand; a clinician confirms it",
        es="Revise cómo está escrito, y la dosis a mano; un clínico la confirma",
    ),
    "misspelt": Text(
        en="If {near} is meant, write it so; else check the dose by hand, and a clinician "
        "confirms it",
        es="Si quiere decir {near}, escríbalo así; si no, revise la dosis a mano y un clínico "
        "la confirma",
    ),
    "slip": Text(
        en="Write {near}, as the label has it; else a clinician confirms the name",
        es="Escriba {near}, como en la etiqueta; si no, un clínico confirma el nombre",
    ),
    "unwritten": Text(
        en="Write `strength_mg` and `units`, `mg_per_ml` and `ml`, or `mg`; else a clinician "
        "confirms it",
        es="Escriba `strength_mg` y `units`, `mg_per_ml` y `ml`, o `mg`; si no, un clínico la "
        "confirma",
    ),
    "route": BY_HAND,
    "no_dose": BY_HAND,
    "use": Text(en="Check that this is meant", es="Compruebe que es lo que se quiere"),
    "gap": Text(
        en="Write `min_gap_hours: {stated}`, or let a clinician confirm it",
        es="Escriba `min_gap_hours: {stated}`, o que un clínico la confirme",
    ),
}
"""How to mend it, where that is not ``CONFIRM``."""

CONFIRMED: Final = Text(en="Confirmed by {by}", es="Confirmado por {by}")
BY_WITH_DOSES: Final = Text(
    en="order confirmed by {by}: {doses}", es="orden confirmada por {by}: {doses}"
)
BOTH: Final = Text(
    en="{name}: ordered {ordered} every {every} h; stated {stated}",
    es="{name}: ordenado {ordered} cada {every} h; indicado {stated}",
)
STATED: Final = Text(
    en="{range} here, {printed} every {every} h ({source})",
    es="aquí {range}, {printed} cada {every} h ({source})",
)
NONE_STATED: Final = Text(en="nothing that it could be compared with", es="nada con que compararlo")
MEASURES: Final = {
    "dose": Text(en="one dose", es="una dosis"),
    "day": Text(en="what is given in 24 h", es="lo que se da en 24 h"),
    "strength": Text(en="the strength", es="la concentración"),
    "amount": Text(en="the amount", es="la cantidad"),
}

NOT_SPLIT: Final = Text(en="capsules are not split", es="las cápsulas no se parten")
WHOLE_DROPS: Final = Text(en="drops are counted whole", es="las gotas se cuentan enteras")
ODD_PART: Final = Text(
    en="a tablet cuts into halves and quarters only",
    es="una tableta solo se parte en mitades y cuartos",
)
PARTS: Final = {
    1: Text(en="this tablet is not to be split", es="esta tableta no se parte"),
    2: Text(en="this tablet cuts into halves only", es="esta tableta solo se parte en mitades"),
    4: ODD_PART,
}
PRACTICE: Final = Text(en="common practice", es="práctica habitual")
AFTER: Final = Text(
    en="{why}; they follow one another here, so mind the time between them",
    es="{why}; aquí van uno tras otro, así que cuide el tiempo entre ambos",
)
SAME: Final = Text(en="they are the same medicine", es="son el mismo medicamento")
ELSE_USE: Final = Text(en="{uses}, not for {use}", es="{uses}, no para {use}")
SPECIES: Final = {
    "dog": Text(en="dog", es="perros"),
    "cat": Text(en="cat", es="gatos"),
}
