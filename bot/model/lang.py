"""The languages that we speak."""

from __future__ import annotations

from typing import Literal

Lang = Literal["en", "es"]
LANGS: tuple[Lang, ...] = ("en", "es")
