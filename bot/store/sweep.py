"""Takes what leads to somebody out of rows, each column by what `erase_table` says of it."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Final

from bot.model.ids import PatientId, PersonId
from bot.records.erasure import (
    MEMBER,
    OWNER,
    Traces,
    case_in_figures,
    hold_in_figures,
    packed,
    renamed,
)
from bot.records.names import Names, longest_first

from .database import Row, Tx
from .erase_names import Trial, others
from .erase_table import ROWS, SWEPT, Fate, swept

IN_FIGURES: Final[Mapping[str, Callable[[Row], str | None]]] = MappingProxyType({
    "case_file.note": lambda row: None,
    "case_file.body": lambda row: case_in_figures(row["body"]),
    "hold.body": lambda row: hold_in_figures(row["body"]),
    "due.data": lambda row: row["data"] if row["state"] == "waiting" else "{}",
})  # fmt: skip
"""What is left of words where the record need be kept no longer."""
UNSENT: Final[Mapping[str, Callable[[Row], str | None]]] = MappingProxyType({
    "due.data": lambda row: row["data"]
    if row["state"] == "waiting" or "text" not in json.loads(row["data"]) else "{}",
})  # fmt: skip
"""What is left of raw copies of what was sent about an erased patient, whose record is kept."""


@dataclass(frozen=True, slots=True)
class Leaver:
    """Who is erased while records stay, as they stand in one of these: ``formal`` in what the
    program wrote, ``sure`` in what people wrote, and ``instead`` who stands there afterwards.
    ``member``: their number among the practice's people; ``stays``: they are of them still, and
    keep the name under what they did as such. ``person``: their number at home, and ``events``
    what came of their own updates: there a name is theirs, whoever else is called so."""

    called: Names
    formal: Traces
    sure: Traces
    instead: str
    member: int | None = None
    stays: bool = False
    person: PersonId | None = None
    events: frozenset[str] = frozenset()

    def did(self, row: Row) -> bool:
        """Whether it is known that they did what a row tells of."""
        known = dict(row)
        if self.member is not None and known.get("member_id") == self.member:
            return True
        if (who := known.get("person_id")) is not None:
            return bool(who == self.person)
        return known.get("event") in self.events

    def by(self, name: str, *, staff: bool, mine: bool = False) -> str:
        """A name under what was done; ``mine``: it is known to be theirs, whoever else is called
        so; ``staff``: it was done as one of the practice."""
        if staff and (self.stays or self.member is None):
            return name
        known = self.called.whole if mine else self.formal.phrases
        if name in known or name.partition(" (")[0] in known:
            return MEMBER if staff else self.instead
        return name

    def told(self, data: str) -> str:
        """JSON without their names; the very same text where there was none."""
        value = json.loads(data)
        left = self._of_own(value)
        for name, instead in self.formal.phrases.items():
            left = renamed(left, name, instead)
        if isinstance(left, dict) and isinstance(left.get("to"), str):  # it may name several
            left["to"] = self.formal.in_text(left["to"])
        left = self.sure.in_value(left)
        return data if left == value else packed(left)

    def _of_own(self, value: Any) -> Any:
        """A JSON value in which the names are gone from each map that leads to them."""
        if isinstance(value, list):
            return [self._of_own(one) for one in value]
        if not isinstance(value, dict):
            return value
        theirs = any(self._leads_here(one) for one in value.values() if isinstance(one, str))
        return {
            key: self.instead if theirs and isinstance(one, str) and one in self.called.whole
            else self._of_own(one)
            for key, one in value.items()
        }  # fmt: skip

    def _leads_here(self, key: str) -> bool:
        """Whether a key has their number, as what stands for their chat has it, or is of a tap
        or an update of theirs."""
        return (
            f"p{self.person}" in key.split(":")
            or f"update:{key.removeprefix('tap:')}" in self.events
        )


@dataclass(frozen=True, slots=True)
class Asked:
    """Who is erased while records stay: how they were ever called, and who they are, or were, at
    home and of the practice."""

    names: Names
    instead: str
    person: PersonId | None = None
    member: Row | None = None
    events: frozenset[str] = frozenset()

    def in_raw(self, tx: Tx, patients: Iterable[PatientId]) -> tuple[str, ...]:
        """What leads to them in raw copies."""
        return self.names.in_raw(others(tx, self.person, self.member, patients))

    def in_record(self, tx: Tx, patient: PatientId | None, owner: str = "") -> Leaver:
        """What is to be found of them in one record, or in what is about nobody. A name that
        another one there has, too, is theirs; the owner's stays."""
        taken = others(tx, self.person, self.member, [] if patient is None else [patient])
        own = longest_first(self.names.whole - taken)
        stays = self.member is not None and self.member["removed_at"] is None
        return Leaver(
            self.names,
            Traces({}, dict.fromkeys(own, self.instead)),
            Traces({}, {}, self.names.in_words({*taken, owner}), self.instead),
            self.instead,
            self.member["id"] if self.member else None,
            stays,
            self.person,
            self.events,
        )


@dataclass(frozen=True, slots=True)
class Clean:
    """What is to be taken out of the rows of one record, or of those about nobody. ``at_home``:
    names that stand for nobody any more; ``left``: table and column → what is left of it."""

    traces: Traces
    leaver: Leaver | None = None
    at_home: frozenset[str] = frozenset()
    left: Mapping[str, Callable[[Row], str | None]] | None = None

    def value(self, table: str, column: str, fate: Fate, row: Row) -> Any:
        """What stands in a column afterwards."""
        left = (self.left or {}).get(f"{table}.{column}")
        now = left(row) if left and row[column] is not None else row[column]
        match fate:
            case _ if now is None:
                return None
            case Fate.name:
                mine = self.leaver is not None and self.leaver.did(row)
                return self.name(now, staff=self._by_staff(row), mine=mine)
            case Fate.staff:
                return self.name(now, staff=True)
            case Fate.meant:
                theirs = row["used_by"] in self.traces.ids
                return None if theirs or self.name(now, staff=self._by_staff(row)) != now else now
            case Fate.account | Fate.member:
                return None if self._theirs(fate, now) else now
            case Fate.key:
                return self.traces.in_text(now)
            case Fate.words:
                text = self.traces.in_text(now)
                return self.leaver.sure.in_text(text) if self.leaver else text
            case _:
                return self._json(now, ours=fate is Fate.ours)

    def name(self, name: str, *, staff: bool, mine: bool = False) -> str:
        """A name under what was done."""
        if not staff and name in self.at_home:
            return OWNER
        return self.leaver.by(name, staff=staff, mine=mine) if self.leaver else name

    def _by_staff(self, row: Row) -> bool:
        """Whether one of the practice may have done what bears a name."""
        if self.leaver is None or self.leaver.member is None:
            return False
        known = dict(row)
        return known.get("member_id") is not None or known.get("person_id", 0) is None

    def row_goes(self, fates: Mapping[str, Fate], row: Row) -> bool:
        """Whether the whole row is theirs."""
        return any(
            self._theirs(fate, row[column]) for column, fate in fates.items() if fate in ROWS
        )

    def _theirs(self, fate: Fate, account: Any) -> bool:
        stays = self.leaver is not None and self.leaver.stays
        kept = stays and fate in (Fate.member, Fate.member_row)
        return account in self.traces.ids and not kept

    def _json(self, text: str, *, ours: bool) -> str:
        text = self.traces.in_json(text)
        if self.leaver and ours:
            text = self.leaver.formal.in_json(text)
        return self.leaver.told(text) if self.leaver else text


def sweep(tx: Trial, table: str, rows: Iterable[Row], clean: Clean) -> None:
    """Clean these rows of a table."""
    fates = swept(table)
    for row in rows:
        key = row["erase_key"]
        if clean.row_goes(fates, row):
            tx.run(f"erase_row:{table}", erase_key=key)
            continue
        for column, fate in fates.items():
            if fate in ROWS:
                continue
            if (new := clean.value(table, column, fate, row)) != row[column]:
                tx.run(f"erase_set:{table}.{column}", erase_key=key, value=new)


def sweep_loose(tx: Trial, clean: Clean) -> None:
    """Clean all rows that are about no patient."""
    for table in SWEPT:
        sweep(tx, table, tx.all(f"erase_loose:{table}"), clean)


def sweep_patient(tx: Trial, patient: int, clean: Clean) -> None:
    """Clean all rows of one patient."""
    for table in SWEPT:
        sweep(tx, table, tx.all(f"erase_of:{table}", patient_id=patient), clean)
