"""Reading a document's values with the path of each, so that a refusal can name the place."""

import json
import re
from collections.abc import Collection, Iterator
from typing import NoReturn

from exercises.tape.errors import DocumentError

LIMIT = 1_000_000_000  # frames; far more than any tape, small enough to stay exact everywhere

_PLAIN = re.compile(r"[A-Za-z_][A-Za-z0-9_-]*")


class RepeatedKeys(dict[str, object]):
    """An object of a document in which a key stood twice."""

    def __init__(self, pairs: list[tuple[str, object]], key: str) -> None:
        super().__init__(pairs)
        self.key = key


class DocumentValue:
    """One value of a document and the way to it."""

    __slots__ = ("_key", "_parent", "value")

    def __init__(
        self, value: object, parent: "DocumentValue | None" = None, key: str | int | None = None
    ) -> None:
        self.value = value
        self._parent = parent
        self._key = key

    @property
    def path(self) -> str:
        """Like ``edits[3].mode``; empty for the document itself."""
        if self._parent is None or self._key is None:
            return ""
        before = self._parent.path
        if isinstance(self._key, int):
            return f"{before}[{self._key}]"
        if not _PLAIN.fullmatch(self._key):
            return f"{before}[{quoted(self._key)}]"
        return f"{before}.{self._key}" if before else self._key

    def refuse(self, problem: str) -> NoReturn:
        raise DocumentError(self.path, problem)

    def fields(self) -> dict[str, "DocumentValue"]:
        """The values of an object by key."""
        if not isinstance(self.value, dict):
            self.refuse(f"must be an object, not {shown(self.value)}")
        if isinstance(self.value, RepeatedKeys):
            DocumentValue(None, self, self.value.key).refuse("stands twice")
        for key in self.value:
            if not isinstance(key, str):
                self.refuse(f"has a key that is not text: {shown(key)}")
        return {key: DocumentValue(value, self, key) for key, value in self.value.items()}

    def known_fields(self, needed: Collection[str], optional: Collection[str] = ()) -> "Fields":
        """The values of an object that has all needed keys and no unknown one."""
        fields = self.fields()
        for key, given in fields.items():
            if key not in needed and key not in optional:
                given.refuse("is not known here")
        for key in needed:
            if key not in fields:
                DocumentValue(None, self, key).refuse("is missing")
        return fields

    def items(self) -> "Iterator[DocumentValue]":
        """The values of a list."""
        if not isinstance(self.value, list):
            self.refuse(f"must be a list, not {shown(self.value)}")
        return (DocumentValue(value, self, index) for index, value in enumerate(self.value))

    def whole(self, least: int = 0, most: int = LIMIT) -> int:
        """A whole number from ``least`` to ``most``."""
        if type(self.value) is not int:
            self.refuse(f"must be a whole number, not {shown(self.value)}")
        if self.value < least:
            self.refuse(f"must be at least {least}, not {shown(self.value)}")
        if self.value > most:
            self.refuse(f"must be at most {most}")
        return self.value

    def truth(self) -> bool:
        if not isinstance(self.value, bool):
            self.refuse(f"must be true or false, not {shown(self.value)}")
        return self.value

    def text(self) -> str:
        if not isinstance(self.value, str):
            self.refuse(f"must be text, not {shown(self.value)}")
        return self.value

    def one_of(self, choices: Collection[str]) -> str:
        if not isinstance(self.value, str) or self.value not in choices:
            wanted = " or ".join(quoted(choice) for choice in choices)
            self.refuse(f"must be {wanted}, not {shown(self.value)}")
        return self.value


Fields = dict[str, DocumentValue]


def shown(value: object) -> str:
    """A value as a message shows it: on one line, and short."""
    match value:
        case dict():
            return "an object"
        case list():
            return "a list"
        case str():
            return quoted(value)
        case int() if not isinstance(value, bool) and abs(value) > LIMIT:
            return "a number beyond all bounds"
        case None | bool() | int() | float():
            return json.dumps(value)
    return type(value).__name__


def quoted(text: str) -> str:
    return json.dumps(text if len(text) <= 40 else text[:40] + "…")
