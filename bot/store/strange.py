"""What strangers wrote is told from what anybody of ours did, so that it need not be kept."""

from __future__ import annotations

import re
from typing import Final

from .tx import Tx

ACCOUNT: Final = re.compile(r'"id":\s?(\d{1,18})\b')
MOST: Final = 100
"""So many different accounts in one update are looked up; one that names more is kept."""


def of_nobody(tx: Tx, body: str) -> bool:
    """Whether an update is of strangers alone: no account in it is or was of somebody at home or
    of the practice."""
    accounts = sorted(set(ACCOUNT.findall(body)))
    ours = (tx.one("account_known", user_id=int(one)) for one in accounts)
    return 0 < len(accounts) <= MOST and not any(ours)
