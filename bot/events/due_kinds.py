"""What each kind of row that falls due hangs on: the hour of the day, or how long ago something
was. While the computer's clock is not believed it still is known how much time has passed."""

from typing import Final

from bot.desk import newcomers
from bot.household import away, doubtful, late, passed
from bot.household.people import ERASING

from . import undelivered, unreached

BY_THE_HOUR: Final = frozenset(
    {
        "board", "prompt", "remind", "unanswered", "silence", "end", "wound", "media", "review",
        away.KIND, passed.UNHEARD,
    }
)  # fmt: skip
"""What a household or staff are sent or asked at an hour of theirs, and what is made of it that
such an hour has passed."""
BY_ELAPSED: Final = frozenset(
    {
        "page", "deadline", "pain", "unclear", "unreachable", doubtful.KIND, late.KIND,
        unreached.KIND, undelivered.REFUSED, newcomers.KIND, ERASING,
    }
)  # fmt: skip
"""What follows so long after something was told, or could not be told: an emergency that nobody
took is paged again, words that nobody understood go to staff."""
