"""Refusals of the platform, in its own words."""

from __future__ import annotations

from typing import Any


class ApiError(Exception):
    """An answer with ``ok: false``: HTTP status, description, parameters."""

    def __init__(self, code: int, description: str, **parameters: int) -> None:
        super().__init__(description)
        self.code = code
        self.description = description
        self.parameters = parameters

    def body(self) -> dict[str, Any]:
        """What goes over the wire."""
        out: dict[str, Any] = {
            "ok": False,
            "error_code": self.code,
            "description": self.description,
        }
        if self.parameters:
            out["parameters"] = self.parameters
        return out


def bad(description: str, **parameters: int) -> ApiError:
    """400, the request is wrong."""
    return ApiError(400, f"Bad Request: {description}", **parameters)


def forbidden(description: str) -> ApiError:
    """403, this chat is closed to the bot."""
    return ApiError(403, f"Forbidden: {description}")


def too_many(retry_after: int) -> ApiError:
    """429, wait ``retry_after`` seconds."""
    return ApiError(429, f"Too Many Requests: retry after {retry_after}", retry_after=retry_after)
