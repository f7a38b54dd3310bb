"""Words in every language that we speak."""

from __future__ import annotations

from typing import Annotated

from pydantic import BaseModel, ConfigDict, StringConstraints

from .lang import LANGS, Lang

__all__ = ["LANGS", "Lang", "Text", "Words"]

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
