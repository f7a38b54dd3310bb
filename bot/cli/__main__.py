"""``python -m bot.cli``: the same as ``slowleash``."""

import sys

from . import main

sys.exit(main())
