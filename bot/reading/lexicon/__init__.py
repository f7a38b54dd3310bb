"""What owners say, by topic: one module for each, English and Spanish side by side.

Every module may have ``CLASSES`` (name → words and phrases; ``word*`` is a beginning),
``RULES`` (patterns by value, see ``bot.reading.grammar``), ``ABOUT`` and ``NEGATED``
(what a value becomes when it is denied; None: nothing).
"""
