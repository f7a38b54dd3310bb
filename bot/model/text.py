"""Words in every language that we speak."""

from __future__ import annotations

from typing import Annotated

from pydantic import BaseModel, ConfigDict, StringConstraints

from .lang import LANGS, Lang

__all__ = ["LANGS", "Advice", "Lang", "Text", "Words"]

Words = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1)]


class Text(BaseModel):
    """One message in English and in Spanish; both are required, none may be empty."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    en: Words
    es: Words

    def say(self, lang: Lang, **fields: object) -> str:
        """The words in ``lang`` with ``{placeholders}`` filled; KeyError names one left open."""
        words = self.en if lang == "en" else self.es
        return words.format(**fields) if fields else words

    def fill(self, en: dict[str, object], es: dict[str, object]) -> Text:
        """Both languages with their placeholders filled, each from its own words."""
        return Text(en=self.en.format(**en), es=self.es.format(**es))


class Advice(Text):
    """What a household is told to do until staff answer. ``by_mouth``: it speaks of food or
    water to offer or leave, so it is not said while nothing is to be given by mouth."""

    by_mouth: bool = False
