"""Which of several matches on the same words, or in one sentence, is meant."""

from __future__ import annotations

from .clauses import Clause
from .matching import Match

OVERRIDES: dict[str, frozenset[str]] = {
    "belly": frozenset(("vomiting", "urine", "stool", "swelling", "appetite")),
    "swallowed": frozenset(("dose", "appetite", "vomiting", "bandage", "licking", "drinking")),
    "dose": frozenset(("appetite", "weight_bearing", "licking", "vomiting_no", "cone", "mishap")),
    "breathing": frozenset(("pain", "belly", "energy", "incision", "stool", "urine")),
    "seizure": frozenset(("pain", "energy", "belly", "weight_bearing", "leg")),
    "cone": frozenset(
        (
            "dose",
            "licking",
            "bandage",
            "mishap",
            "leg",
            "incision",
            "appetite",
            "energy_lethargic",
            "energy_quiet",
            "weight_bearing_none",
        )
    ),
    "bandage": frozenset(
        (
            "incision",
            "swelling",
            "mishap",
            "urine",
            "weight_bearing",
            "gums",
            "swallowed",
            "bruising",
            "energy",
            "pain_none",
            "cone_off",
        )
    ),
    "walk": frozenset(("dose", "mishap", "energy_lethargic", "weight_bearing_none")),
    "ice": frozenset(("dose", "drinking", "warm_compress", "swelling")),
    "warm_compress": frozenset(("dose", "drinking")),
    "massage": frozenset(("dose", "stool")),
    "urine": frozenset(
        ("bandage", "incision", "drinking", "vomiting", "pain", "stool_loose", "stool_straining")
    ),
    "stool": frozenset(("incision", "vomiting", "bruising", "pain", "energy", "mobility")),
    "vomiting": frozenset(("incision", "stool", "gums", "appetite", "drinking", "bruising")),
    "gums": frozenset(("incision", "bruising", "swelling", "pain")),
    "leg": frozenset(("weight_bearing", "mishap")),
    "weight_bearing": frozenset(
        (
            "mobility_same",
            "pain_none",
            "stool",
            "mishap",
            "leg",
            "walk",
            "energy_collapsed",
            "appetite_less",
        )
    ),
    "incision": frozenset(
        (
            "drinking",
            "pain",
            "mishap",
            "weight_bearing_toe_touching",
            "seizure",
            "fixator",
            "mobility",
            "urine_bloody",
            "appetite",
            "energy",
        )
    ),
    "fixator": frozenset(("mishap", "leg", "bandage", "mobility", "cone", "energy", "swallowed")),
    "allergy": frozenset(("swelling", "breathing", "pain", "incision", "bruising", "energy")),
    "other_leg": frozenset(("weight_bearing", "mobility", "pain", "leg", "licking")),
    "life": frozenset(("energy", "mishap", "weight_bearing", "breathing", "pain", "request")),
    "mobility": frozenset(("pain_mild",)),
    "swelling": frozenset(("mobility", "incision", "bruising")),
    "pain": frozenset(("licking", "energy", "appetite", "weight_bearing_none")),
    "appetite": frozenset(
        ("incision_clean", "energy_quiet", "energy_normal", "energy_lethargic", "licking_no")
    ),
    "drinking": frozenset(("appetite", "licking", "dose", "walk", "vomiting", "energy_normal")),
    "licking": frozenset(("swallowed", "appetite", "incision_clean")),
    "mishap": frozenset(("weight_bearing_full", "weight_bearing_none", "walk")),
    "energy": frozenset(("urine", "leg", "mishap", "weight_bearing", "appetite")),
    "request": frozenset(("dose", "energy")),
}
"""Where two topics are read from the same words: the first takes the words from these."""


def _yields(match: Match, to: Match) -> bool:
    names = OVERRIDES.get(to.rule.about)
    if match.rule.value == "collapsed" and to.rule.about == "pain":
        return False
    if "both" in match.rule.tags:
        return False  # "neither bowl": nothing eaten, and nothing drunk
    if names is None or to.rule.weight < match.rule.weight:
        return False
    about = match.rule.about
    return about in names or f"{about}_{match.rule.value}" in names


_FIRST = (
    "life swallowed other_leg fixator allergy leg breathing seizure belly gums incision urine "
    "stool vomiting bandage weight_bearing mishap pain energy cone dose appetite drinking "
    "licking swelling bruising"
).split()
"""Where two would each take the words from the other, the graver keeps them."""


def _taken(match: Match, by: Match) -> bool:
    """Whether the words that both stand on are the other's."""
    if not _yields(match, by):
        return False
    if not _yields(by, match):
        return True
    mine, its = (
        _FIRST.index(about) if about in _FIRST else len(_FIRST)
        for about in (match.rule.about, by.rule.about)
    )
    return mine > its


def in_figures(matches: list[Match]) -> list[Match]:
    """Findings on the words of a figure of speech that is no less specific."""
    idiom: dict[int, int] = {}
    for match in matches:
        if match.rule.about == "idiom":
            for at in match.at:
                idiom[at] = max(match.rule.weight, idiom.get(at, 0))
    if not idiom:
        return []
    return [
        m
        for m in matches
        if m.rule.about != "idiom" and any(idiom.get(at, 0) >= m.rule.weight for at in m.at)
    ]


def drop_overlaps(matches: list[Match], clauses: list[Clause]) -> list[Match]:
    """Of matches on the same words, the most specific within a topic, and the topic that
    the words belong to; idioms beat all that are no more specific."""
    kept: list[Match] = []
    used: dict[str, dict[int, tuple[int, str]]] = {}
    idiom: dict[int, int] = {}
    for match in sorted(matches, key=lambda m: (m.rule.about != "idiom", -m.rule.weight)):
        about = match.rule.about
        weight = match.rule.weight
        if about == "idiom":
            for at in match.at:
                idiom[at] = max(weight, idiom.get(at, 0))
            kept.append(match)
            continue
        if any(idiom.get(at, 0) >= weight for at in match.at):
            continue
        axis = f"{about}-loose" if match.rule.value == "loose" else about
        table = used.setdefault(axis, {})
        value = match.rule.value
        if any(
            table[at][0] > weight and (table[at][1] != value or match.denied)
            for at in match.at
            if at in table
        ):
            continue  # the same value said more shortly may still tell a detail
        for at in match.at:
            if at not in table or table[at][0] < weight:
                table[at] = (weight, value)
        kept.append(match)
    owners: dict[int, list[Match]] = {}
    for match in kept:
        for at in match.at:
            owners.setdefault(at, []).append(match)
    out = [
        match
        for match in kept
        if not any(
            other is not match and _taken(match, other) for at in match.at for other in owners[at]
        )
    ]
    out = _beside(out, clauses)
    return sorted(out, key=lambda m: (m.first, m.last))


_AFTER_A_FIT = frozenset(
    (
        ("pain", "moderate"), ("pain", "mild"), ("pain", "severe"), ("energy", "lethargic"),
        ("energy", "quiet"), ("weight_bearing", "partial"), ("weight_bearing", "full"),
        ("mobility", "worse"),
    )
)  # fmt: skip
"""What a fit brings with it."""
_OF_A_FAINT = frozenset(("weight_bearing", "mobility"))
"""What no longer is said of one that lies there."""


def _in_vain(clause: Clause) -> bool:
    return not clause.keys.isdisjoint(("<spat>", "<vomit>", "<refuse>", "<trying>", "<lick>"))


_OF_HARM = frozenset("pain weight_bearing mobility swelling incision leg".split())
_UNDER = frozenset("under underneath beneath behind debajo abajo detras".split())
_HIDES_IN = frozenset(
    "bed sofa couch table chair wardrobe cupboard cama sillon mesa mueble ropero".split()
)


_OF_WATER = frozenset(("<pee>", "<drops>"))


def _hides(clause: Clause) -> bool:
    """Whether it only ran to hide."""
    return bool(clause.keys & _UNDER and clause.keys & _HIDES_IN)


def bare_leg(clause: Clause) -> bool:
    """Whether no part of a leg is named in the clause."""
    return clause.keys.isdisjoint(("<joint>", "<legword>"))


def _sore(clause: Clause) -> bool:
    """Whether the wound or the leg is named in the clause."""
    return not clause.keys.isdisjoint(("<wound>", "<bandageword>", "<joint>", "<legword>"))


def _beside(matches: list[Match], clauses: list[Clause]) -> list[Match]:
    """What another finding of the same sentence explains: the pills swallowed are no dose
    and no meal, pacing after a seizure is no pain."""
    eaten = {
        m.clause for m in matches if m.rule.about == "swallowed" and not m.denied and not m.void
    }
    seized = {
        clauses[m.clause].sentence
        for m in matches
        if m.rule.about == "seizure" and not m.denied and not m.void
    }
    fainted = {
        m.clause for m in matches if m.rule.value == "collapsed" and not m.denied and not m.void
    }

    def sentences_of(*wanted: tuple[str, str]) -> set[int]:
        return {
            clauses[m.clause].sentence
            for m in matches
            if (m.rule.about, m.rule.value) in wanted and not m.denied and not m.void
        }

    puffed = sentences_of(("allergy", "swollen_face"), ("allergy", "hives"))
    bloated = sentences_of(("belly", "bloated"))
    reeking = sentences_of(("bandage", "odour"))
    hurt = sentences_of(("mishap", "slipped"), ("mishap", "ran"), ("mishap", "rough_play"))
    tight = sentences_of(("bandage", "tight"))
    loose = sentences_of(("bandage", "slipped"))
    gulped = sentences_of(("swallowed", "bandage_or_object"))
    bloody = sentences_of(("vomiting", "bloody"), ("stool", "bloody"), ("urine", "bloody"))
    bleeding = sentences_of(("incision", "bleeding"))
    thirsty = sentences_of(("drinking", "none"))
    blue = sentences_of(("gums", "blue"), ("gums", "pale"), ("breathing", "laboured"))
    given = sentences_of(("dose", "given"), ("dose", "refused"), ("dose", "vomited_up"))
    spat = sentences_of(("dose", "refused"))
    pooing = sentences_of(("stool", "straining"))
    wet = any(c.keys & _OF_WATER for c in clauses)
    strained = sentences_of(("stool", "straining"), ("urine", "straining"))
    cones = any(m.rule.about == "cone" for m in matches)
    harmed = any(m.rule.about in _OF_HARM and not m.denied and not m.void for m in matches)
    weeping = {  # "pink discharge": the colour is the discharge's
        at
        for m in matches
        if m.rule.value in ("discharge", "pus", "bleeding") and not m.denied
        for at in m.at
        if at - 1 in m.at or at + 1 in m.at
    }
    sound = {m.clause for m in matches if m.rule.value == "full" and not m.denied}
    rough = {m.clause for m in matches if m.rule.value == "rough_play" and not m.void}
    near = {c + step for c in eaten for step in (-1, 0, 1)}
    sentences = {clauses[c].sentence for c in eaten}
    out = []
    for match in matches:
        clause = clauses[match.clause]
        key = (match.rule.about, match.rule.value)
        if (
            key in (("dose", "given"), ("appetite", "normal"))
            and match.clause in near
            and (
                match.clause in eaten
                or (clause.sentence in sentences and "<clock>" not in clause.keys)
            )
        ):
            continue
        if match.rule.about == "licking" and match.clause in eaten and not _sore(clause):
            continue  # "a good chew of the lilies"
        if key == ("dose", "doubled") and "<twiceword>" in clause.keys and _in_vain(clause):
            continue  # "spat it out twice", "tried twice"
        if (
            key == ("dose", "given")
            and clause.sentence in spat
            and clause.rank < 2
            and "manner" in match.rule.tags
        ):
            continue  # "spat it out, even in cheese"
        if (
            match.rule.value == "none"
            and clause.sentence in strained
            and "empty" in match.rule.tags
        ):
            continue  # "pushing and pushing, nothing"
        if match.rule.about == "mishap" and match.clause in fainted:
            continue
        if (
            match.rule.value == "collapsed"
            and clause.sentence in seized
            and "eyes" in match.rule.tags
        ):
            continue
        if (
            key == ("incision", "odour")
            and clause.sentence in reeking
            and "<wound>" not in clause.keys
        ):
            continue  # it is the bandage that smells
        if key == ("mishap", "slipped") and clause.sentence in loose:
            continue  # the bandage it is that slips
        if key == ("bandage", "slipped") and clause.sentence in gulped:
            continue  # what was pulled off was swallowed
        dry = "<pee>" not in clause.keys
        if key == ("urine", "accident") and clause.sentence in bleeding and dry:
            continue  # the puddle is blood
        if key == ("appetite", "none") and "bowl" in match.rule.tags and clause.sentence in thirsty:
            continue  # it is the water that stays in the bowl
        if key == ("incision", "bleeding") and clause.sentence in bloody and not _sore(clause):
            continue  # the blood is told of already
        if key == ("urine", "straining") and clause.sentence in pooing and not wet:
            continue  # in and out of the tray, but for the other thing
        if match.rule.value == "lethargic" and "pancake" in clause.keys and cones:
            continue  # the inflatable ring is flat
        if match.rule.about == "swelling" and clause.sentence in bloated and bare_leg(clause):
            continue
        if key in (("vomiting", "yes"), ("vomiting", "no")) and clause.sentence in bloated:
            continue
        if key == ("mishap", "ran") and not harmed and _hides(clause):
            continue  # "she ran under the bed"
        if key == ("energy", "normal") and clause.sentence in hurt:
            continue
        if match.rule.about == "urine" and clause.sentence in seized:
            continue
        if key == ("incision", "red") and any(at in weeping for at in match.at):
            continue
        if key == ("incision", "red") and clause.sentence in tight and not _sore(clause):
            continue  # the toes are pink
        if key == ("mobility", "same") and match.clause in sound:
            continue
        if key == ("energy", "normal") and match.clause in rough:
            continue
        if (
            match.rule.about == "swelling"
            and clause.sentence in tight
            and "<toeword>" in clause.keys
        ):
            continue
        if (
            match.rule.about == "pain"
            and match.rule.value == "moderate"
            and clause.sentence in blue
        ):
            continue
        if match.rule.about == "appetite" and clause.sentence in given and "<hid>" in clause.keys:
            continue
        if key in _AFTER_A_FIT and clause.sentence in seized:
            continue
        if match.rule.about in _OF_A_FAINT and match.clause in fainted and bare_leg(clause):
            continue  # "limp in my arms": no limp
        if match.rule.about == "swelling" and clause.sentence in puffed and not _sore(clause):
            continue  # it is the face that swells
        out.append(match)
    return out
