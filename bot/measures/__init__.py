"""The statistics of a practice: pure functions of values, each with n and an interval.

A figure here describes; it compares nothing and proves nothing. Small numbers are said to
be small (``size``).
"""
