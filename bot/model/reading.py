"""What the reader is told about a reply, and what it makes of it."""

from __future__ import annotations

from dataclasses import dataclass

from .lang import Lang
from .observation import Observation
from .urgency import Urgency


@dataclass(frozen=True, slots=True)
class Due:
    """A medicine that was due in the prompt that is answered: ``med`` as the plan writes it,
    ``called`` the forms and kinds that it may go by (capsule, liquid, pill, antibiotic), none where
    they are not known; ``half``: one dose is half a tablet."""

    med: str
    called: frozenset[str] = frozenset()
    half: bool = False


@dataclass(frozen=True, slots=True)
class Context:
    """What was asked, of whom, and when the reply came.

    ``asked`` is one of ``vocabulary.ASKED``; ``at`` the local time of the reply in
    minutes after midnight, None when not known; ``medicines`` the names that the
    plan gives its medicines; ``lang`` a hint, never a limit: both are always read.
    ``names`` are the patient's own names. ``doses_due``: so many medicines were due in the
    prompt that is answered, whatever else it asked; ``due`` are these, where it is known which,
    in the order in which they stood there; ``told``: those of the same round that were told before,
    each with what was told of it (given, missed, refused). ``people``: who is at home, and the
    clinician: "thanks ana" tells nothing.
    """

    asked: str = "none"
    day: int = 7
    at: int | None = None
    species: str = "dog"
    lang: Lang | None = None
    medicines: tuple[str, ...] = ()
    names: tuple[str, ...] = ()
    doses_due: int = 0
    due: tuple[Due, ...] = ()
    told: tuple[tuple[str, str], ...] = ()
    people: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Doubt:
    """A matter on which the two readers disagree, to be asked before it settles.

    ``about`` and ``value`` as in the vocabulary, ``urgency`` what it would be if it is so.
    ``alarmed``: the grammar reads it and the statistical reader is sure that nothing is
    wrong; then staff are paged as for any alarm, told that it is doubtful, and the owner is
    asked. Else the grammar does not read it, and only the answer raises it. ``faint``: only
    suspected, and not much: left where a model that knows more of the matter sees nothing.
    """

    about: str
    value: str
    urgency: Urgency
    alarmed: bool = False
    faint: bool = False


@dataclass(frozen=True, slots=True)
class Suppressed:
    """A trouble that the words name and that was not counted: ``by`` is the id of what took it
    away (``bot/reading/suppress.py``), ``span`` where it stands in the reply."""

    about: str
    value: str
    by: str
    span: tuple[int, int]


@dataclass(frozen=True, slots=True)
class Reading:
    """Observations with their spans, and whether the reply was understood at all.

    ``understood`` is False where any part that may matter was not: such a reply is
    never treated as fine. ``greeting`` marks thanks or a greeting alone.
    ``questions`` are the topics that the owner asks about (a question, not an
    observation), for the answer on what is expected. ``reasons`` say in plain
    English which words led to what. ``bare`` are the topics that only a yes, a no or a figure
    answered: their value lies in what was asked, not in the words. ``asks`` are the matters
    on which the two readers disagree, the most urgent first. ``suppressed`` are the troubles
    that were named and not counted, and why. ``unread`` is how many words weigh something and
    stand in nothing that was found: 0 where all is accounted for. ``round``: every word was read
    as a telling of the medicines that were due, or as something else in which nothing is wrong.
    ``unsettled``: what became of a medicine is told in two ways, and a person has to say which.
    ``hoped`` are the topics of what was named and is only wished, feared, ordered or to come.
    """

    observations: tuple[Observation, ...]
    understood: bool
    lang: Lang
    reasons: tuple[str, ...] = ()
    questions: tuple[str, ...] = ()
    greeting: bool = False
    bare: frozenset[str] = frozenset()
    asks: tuple[Doubt, ...] = ()
    suppressed: tuple[Suppressed, ...] = ()
    unread: int = 0
    round: bool = False
    unsettled: bool = False
    hoped: frozenset[str] = frozenset()
