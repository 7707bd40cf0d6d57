"""The cache of made pictures and sounds in files, which takes no more of the disk than it may."""

import os
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from typing import Any

from django.core.cache.backends.base import DEFAULT_TIMEOUT
from django.core.cache.backends.filebased import FileBasedCache

ROOM = 0.9  # of the limit is left after trimming
LOOKS = 0.02  # of the limit may be written between two looks at the folder


class KeptFiles(FileBasedCache):
    """What was used last longest ago goes first. `LIMIT` in the options is in bytes.

    Each process looks at the folder when it has written a fiftieth of the limit, so that workers
    together stay below it but for that. Reading marks a file as used.
    """

    def __init__(self, folder: str, params: dict[str, Any]) -> None:
        super().__init__(folder, params)
        self.folder = Path(folder).absolute()
        self.limit = int(params["OPTIONS"]["LIMIT"])
        self.written = 0

    def get(self, key: str, default: Any = None, version: int | None = None) -> Any:
        found = super().get(key, default, version)
        with suppress(OSError):  # it isn't kept, or was trimmed this moment
            os.utime(self.path_of(key, version))
        return found

    def set(
        self,
        key: str,
        value: Any,
        timeout: float | None = DEFAULT_TIMEOUT,
        version: int | None = None,
    ) -> None:
        super().set(key, value, timeout, version)
        with suppress(FileNotFoundError):  # trimmed by another process already
            self.written += self.path_of(key, version).stat().st_size
        if self.written > LOOKS * self.limit:
            self.trim()

    def path_of(self, key: str, version: int | None = None) -> Path:
        return Path(self._key_to_file(key, version))  # type: ignore[attr-defined]

    def _cull(self) -> None:
        """The number of files is no matter."""

    def trim(self) -> int:
        """Keep within the limit; how many files went."""
        self.written = 0
        files = sorted(self._files())
        over = sum(size for _, size, _ in files) - self.limit
        if over <= 0:
            return 0
        return self._drop(files, over + (1 - ROOM) * self.limit)

    def _drop(self, files: list[tuple[float, int, Path]], room: float) -> int:
        for number, (_, size, path) in enumerate(files):
            if room <= 0:
                return number
            path.unlink(missing_ok=True)
            room -= size
        return len(files)

    def _files(self) -> Iterator[tuple[float, int, Path]]:
        """When each was used last, its bytes and its path; also what was never finished."""
        for path in self.folder.glob("*"):
            with suppress(FileNotFoundError):
                stat = path.stat()
                yield stat.st_mtime, stat.st_size, path
