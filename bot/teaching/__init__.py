"""Teaches the statistical reader from labelled replies; never needed while the bot runs.

From the top of a checkout: ``python -m bot.teaching``; ``--measure`` for figures on folds.
"""
