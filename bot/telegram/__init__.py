"""The chat platform: the only room that knows Telegram.

Updates come in by ``poll`` or ``webhook`` and are read by ``translate``; messages go
out by ``send`` as fast as ``pace`` lets them.
"""

import os

# Durations as timedelta: what the library will do anyway, and without its warning on each 429.
os.environ.setdefault("PTB_TIMEDELTA", "true")
