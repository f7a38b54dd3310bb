"""The body of a call, whichever way it was sent: query, form, multipart or JSON."""

from __future__ import annotations

import json
from dataclasses import dataclass, field
from typing import Any

from starlette.datastructures import UploadFile
from starlette.requests import Request

from .errors import bad


@dataclass(frozen=True)
class Upload:
    """A file inside a multipart body."""

    name: str
    mime: str
    content: bytes


@dataclass(frozen=True)
class Params:
    """Named values of a call, read strictly; what is wrong raises a 400."""

    values: dict[str, Any]
    uploads: dict[str, Upload] = field(default_factory=dict)

    def has(self, name: str) -> bool:
        """Whether it was given at all."""
        return self.values.get(name) not in (None, "")

    def text(self, name: str, default: str = "") -> str:
        """A string; numbers are written out."""
        value = self.values.get(name)
        if value is None:
            return default
        if isinstance(value, dict | list | bool):
            raise bad(f"field {name} must be a string")
        return str(value)

    def number(self, name: str, default: int | None = None) -> int:
        """A whole number."""
        value = self.values.get(name)
        if value in (None, ""):
            if default is None:
                raise bad(f"{name} is empty")
            return default
        try:
            if isinstance(value, bool):
                raise ValueError(value)
            return int(value)
        except (TypeError, ValueError):
            raise bad(f"field {name} must be a number") from None

    def flag(self, name: str) -> bool:
        """True or false."""
        return str(self.values.get(name)).lower() in ("true", "1")

    def data(self, name: str) -> Any:
        """A nested value: JSON itself, or JSON in a string. None when not given."""
        value = self.values.get(name)
        if value in (None, ""):
            return None
        if not isinstance(value, str):
            return value
        try:
            return json.loads(value)
        except ValueError:
            raise bad(f"can't parse {name} JSON object") from None


async def read(request: Request) -> Params:
    """Read a call's query and body."""
    values: dict[str, Any] = dict(request.query_params)
    kind = request.headers.get("content-type", "").partition(";")[0].strip().lower()
    if kind == "application/json":
        try:
            body = json.loads(await request.body() or b"{}")
        except ValueError:
            raise bad("can't parse JSON object") from None
        if not isinstance(body, dict):
            raise bad("object expected as JSON body")
        return Params(values | body)
    uploads: dict[str, Upload] = {}
    if kind in ("application/x-www-form-urlencoded", "multipart/form-data"):
        async with request.form() as form:
            for name, value in form.multi_items():
                if isinstance(value, UploadFile):
                    content = await value.read()
                    mime = value.content_type or "application/octet-stream"
                    uploads[name] = Upload(value.filename or "file", mime, content)
                else:
                    values[name] = value
    return Params(values, uploads)
