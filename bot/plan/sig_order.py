"""Medicines ordered by a line of shorthand: spelt out in the tree of the file, so that what
follows, and every error, sees the same fields as in an order written out."""

from __future__ import annotations

import re
from typing import Final

from bot.model.quantity import as_fraction, fraction_of
from bot.protocol.problem import Problem
from bot.protocol.yaml_tree import Listing, Mapping, Node, Place, Scalar

from .sig import Sig, SigError, parse_sig

_STRENGTH: Final = re.compile(
    r"(?P<name>.*?\S)[\s,]+(?P<figure>\d+(?:[.,]\d+)?)\s*mg(?P<ml>\s*/\s*ml)?"
    r"(?:\s+(?P<form>tab|cap|chew|tableta|cápsula|capsula)\w*)?",
    re.IGNORECASE,
)
_FORMS: Final = {"tab": "tablet", "cap": "capsule", "cáp": "capsule", "che": "chew"}
_CONFIRM: Final = (
    "Take it away: a clinician confirms in the staff chat when asked, or is named with "
    "`slowleash enrol --confirm-as`"
)
MEDICINE_ACTS: Final = {
    "confirmed_by": _CONFIRM,
    "confirmed": _CONFIRM,
    "withheld": "Take it away: a medicine is stopped and let go on in the staff chat (/plan)",
}
"""Keys that only an act of somebody writes into a medicine, and what to do instead."""
PLAN_ACTS: Final = {"moves": "Take it away, and write the zone where the household is now"}
"""Likewise into a plan."""
_AMOUNT: Final = ("units", "ml", "mg")


def spell_out(root: Mapping, name: str) -> list[Problem]:
    """Put what each ``sig`` says into its medicine's other fields. ``name`` is the file.

    A strength in the medicine's name ("carprofen 75 mg") becomes ``strength_mg``; a
    medicine given as needed may leave out ``first_dose``: it may be given from home on.
    """
    medicines = root.values.get("medicines")
    problems = _acts(root, name, PLAN_ACTS)
    for medicine in medicines.items if isinstance(medicines, Listing) else ():
        if isinstance(medicine, Mapping):
            problems += spell_out_medicine(medicine, name, root.values.get("home"))
    return problems


def spell_out_medicine(medicine: Mapping, name: str, home: Node | None = None) -> list[Problem]:
    """As ``spell_out``, for one medicine; ``home`` is when the patient goes home."""
    sig = medicine.values.get("sig")
    acts = _acts(medicine, name, MEDICINE_ACTS)
    if not isinstance(sig, Scalar) or not isinstance(sig.value, str):
        return acts

    def problem(what: str, mend: str, place: Place = sig.place) -> Problem:
        return Problem(name, place.line, place.column, what, mend[:1].upper() + mend[1:])

    try:
        read = parse_sig(sig.raw)
    except SigError as error:
        _stand_in(medicine, sig.place)
        return [*acts, problem(error.what, error.mend)]
    problems = acts
    told = {**_fields(read), **_from_name(medicine)}
    for key in list(told):
        if key in medicine.values:
            place = medicine.keys[key]
            if not _same(medicine.values[key], told.pop(key)):
                where = "the name" if key in ("strength_mg", "mg_per_ml") else "the sig"
                what = f"`{key}` says something else than {where}"
                problems.append(problem(what, "keep one of them", place))
    if "amount" not in medicine.values and not _any(medicine, told, _AMOUNT):
        problems.append(problem("the sig says no amount", "write it, as in 1 tab PO q12h x 7d"))
    if not _any(medicine, told, ("every_hours",)):
        problems.append(problem("the sig says no interval", "write q12h or BID, or every_hours"))
    if not _any(medicine, told, ("days", "doses")):
        problems.append(problem("the sig does not say for how long", "write it, as in x 7d"))
    if read.as_needed and isinstance(home, Scalar):
        told.setdefault("first_dose", home)
    _fill(medicine, told, sig.place)
    if problems:
        _stand_in(medicine, sig.place)
    return problems


def _acts(node: Mapping, name: str, acts: dict[str, str]) -> list[Problem]:
    """What somebody does, and is logged as theirs, cannot be written into an order."""
    return [
        Problem(name, place.line, place.column, f"`{key}` cannot be written into an order", mend)
        for key, mend in acts.items()
        if (place := node.keys.get(key)) is not None
    ]


def _fields(sig: Sig) -> dict[str, object]:
    """What the sig says, by the names of an order's fields."""
    told: dict[str, object] = {
        "form": sig.form, "route": sig.route, "every_hours": sig.every_hours, "days": sig.days,
        "doses": sig.doses, "needed_for": sig.needed_for,
        "as_needed": sig.as_needed or None, "with_food": sig.with_food or None,
    }  # fmt: skip
    if sig.amount is not None:
        key = sig.unit if sig.unit in ("ml", "mg") else "units"
        told[str(key)] = float(sig.amount)
        if sig.quantity is not None:
            told["doses"] = int(sig.quantity / sig.amount)
    return {key: value for key, value in told.items() if value is not None}


def _from_name(medicine: Mapping) -> dict[str, object]:
    """The strength that stands in the name, which then goes without it."""
    name = medicine.values.get("name")
    if not isinstance(name, Scalar) or not isinstance(name.value, str):
        return {}
    match = _STRENGTH.fullmatch(name.value)
    if match is None:
        return {}
    name.value = match["name"]
    told: dict[str, object] = {}
    told["mg_per_ml" if match["ml"] else "strength_mg"] = float(match["figure"].replace(",", "."))
    if match["form"] and "form" not in medicine.values:
        told["form"] = _FORMS[match["form"][:3].lower()]
    return told


def _same(node: Node, value: object) -> bool:
    """Whether the file says the same as the sig: one and a half is 1.5 and 1 1/2."""
    if not isinstance(node, Scalar):
        return False
    if isinstance(value, float) and isinstance(node.value, str):
        try:
            return as_fraction(value) == fraction_of(node.value)
        except ValueError:
            return True  # no number at all: the field says so itself
    return node.value == value


def _any(medicine: Mapping, told: dict[str, object], keys: tuple[str, ...]) -> bool:
    return any(key in told or key in medicine.values for key in keys)


def _stand_in(medicine: Mapping, place: Place) -> None:
    """What is missing and was told already is not to be told again; nothing is loaded."""
    stand_ins: dict[str, object] = {"every_hours": 24}
    if "doses" not in medicine.values:
        stand_ins["days"] = 1
    if not _any(medicine, {}, ("amount", *_AMOUNT)):
        stand_ins["mg"] = 1
    _fill(medicine, stand_ins, place)


def _fill(medicine: Mapping, told: dict[str, object], place: Place) -> None:
    """Put in what is not there yet."""
    for key, value in told.items():
        if key in medicine.values:
            continue
        medicine.keys[key] = place
        raw = value.raw if isinstance(value, Scalar) else str(value)
        held = value.value if isinstance(value, Scalar) else value
        medicine.values[key] = Scalar(place, raw, held)  # type: ignore[arg-type]
