"""Erasure of what somebody wrote who never joined: it is in no one's record."""

from __future__ import annotations

from dataclasses import dataclass

from bot.records.erasure import LOOSE, STRANGER, Tally, Traces

from .audit import head
from .database import StoreError
from .erase import Erasure
from .erase_names import batches, names_of_account, nobody


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
        names = {*called.whole, *called.accounts}
        ids = {number: STRANGER}
        only, named = Traces(ids, {}), Traces(ids, dict.fromkeys(names, STRANGER))
        for row in batches(nobody(self.whole), "id"):
            said = f"{row['author']}\n{row['text']}\n{row['data']}\n{row['event']}"
            if only.in_text(said) == said:
                continue
            left = {**row, "author": named.in_text(row["author"])}
            if row["kind"] in LOOSE:
                left |= {"author": STRANGER, "text": "", "data": "{}"}
            self._entry_of(left, named, None, row)
        self._received(only)
        self._threads(only)
        self._sent(only, Traces({}, {}))
        self.tx.run("erase_turned_away", sender=number)
        self.tx.run("erase_invitation", user_id=number)
        for name in ("erase_thread", "erase_moved"):
            self.tx.run(name, chat_id=number)
        return self._close(None, str(number))
