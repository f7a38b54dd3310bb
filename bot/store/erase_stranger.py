"""Erasure of what somebody wrote who never joined: it is in no one's record."""

from __future__ import annotations

from dataclasses import dataclass, replace

from bot.records.erasure import LOOSE, STRANGER, Tally, Traces

from .audit import head
from .database import StoreError
from .erase import Erasure
from .erase_names import batches, names_of_account, nobody
from .sweep import Asked, Clean, sweep_loose


@dataclass(slots=True)
class StrangerErasure(Erasure):
    """As ``Erasure``, by the number of an account."""

    def stranger(self, number: int) -> Tally:
        """Erase what somebody wrote who is with no patient and not of the practice, by the
        number of their account."""
        here = self.tx.one("person_of_user", user_id=number)
        if here is not None:
            raise StoreError(
                f"{number} is {here['name']}, who takes care of a patient: --person {here['id']}"
            )
        if any(number in (one["user_id"], one["chat_id"]) for one in self.tx.all("erase_staff")):
            raise StoreError(f"{number} is or was one of the practice: their acts are its record")
        last = head(self.whole)
        self._entry = (last.entry if last else 0) + 1
        called = names_of_account(self.whole, number)
        self._left = Asked(called, STRANGER)
        self._look_for_leaver(None)
        only = Traces({number: STRANGER}, {})
        named = replace(only, phrases=dict.fromkeys({*called.whole, *called.accounts}, STRANGER))
        for row in batches(nobody(self.whole), "id"):
            said = f"{row['author']}\n{row['text']}\n{row['data']}\n{row['event']}"
            if only.in_text(said) != said:
                left = {**row, "author": named.in_text(row["author"])}
                if row["kind"] in LOOSE:
                    left |= {"author": STRANGER, "text": "", "data": "{}"}
                self._entry_of(left, named, None, row)
            elif row["person_id"] is None:  # what somebody of ours told of themselves names them
                self._entry_of(row, only, None)
        leaver = self._leaver
        sure = replace(only, names=leaver.sure.names if leaver else ())
        self._received(sure)
        self._asked(only, sure)
        self._sent(only, sure)
        self._waits(sure)
        sweep_loose(self.tx, Clean(only, leaver))
        return self._close(None, str(number))
