"""What a backup says of itself, so that whoever reads it can tell whether it is whole."""

import json
from dataclasses import asdict, dataclass
from typing import Any, Self

from course.backup.refusal import BackupRefused

FORMAT = 1  # raise it when an older site could not read what is written now

Rows = dict[str, int]
"""How many rows each table of a database has."""


@dataclass(frozen=True)
class Member:
    """A file within the backup; `size` in bytes."""

    size: int
    sha256: str


@dataclass(frozen=True, kw_only=True)
class Manifest:
    """`database` is the kind of database; `migrations` are those that had been applied to it."""

    made_at: str
    database: str
    migrations: list[str]
    rows: Rows
    members: dict[str, Member]

    def as_json(self) -> bytes:
        return json.dumps({"format": FORMAT, **asdict(self)}, indent=1).encode()

    @classmethod
    def read(cls, content: bytes) -> Self:
        """BackupRefused where this version of the site can't know what is in the backup."""
        try:
            told: dict[str, Any] = json.loads(content)
            if told.pop("format") != FORMAT:
                raise BackupRefused("The backup was made by a later version of the site.")
            members = {name: Member(**member) for name, member in told.pop("members").items()}
            return cls(members=members, **told)
        except (ValueError, TypeError, KeyError, AttributeError) as error:
            raise BackupRefused("The backup’s manifest can’t be read.") from error
