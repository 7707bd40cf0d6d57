import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, ClassVar

from exercises.drills.asks.ask import AnswerRefused, Ask, Json, no_answer
from exercises.signal.photographs import LARGEST_FILE, MOST_PIXELS

DIGEST = re.compile(r"[0-9a-f]{64}")
NONE_SENT = "Choose a picture. Nothing has been recorded yet."


@dataclass(frozen=True, kw_only=True)
class SentPicture(Ask):
    """A picture that is sent as a file; the answer is its digest. `rubric` as in `FreeText`."""

    form: ClassVar[str] = "picture"

    rubric: tuple[str, ...]

    @property
    def limits(self) -> str:
        size, pixels = LARGEST_FILE // 1_000_000, MOST_PIXELS // 1_000_000
        return f"One picture: JPEG, PNG or WebP, up to {size} MB and {pixels} million pixels."

    def read(self, typed: Sequence[str]) -> str:
        """Nothing typed is a picture: the form reads the file that was sent."""
        raise AnswerRefused(NONE_SENT)

    def in_words(self, answer: Any) -> str:
        if not (isinstance(answer, str) and DIGEST.fullmatch(answer)):
            raise no_answer("Send a picture.")
        return "A picture"

    def every(self) -> Sequence[str]:
        return ["0" * 64, "f" * 64]

    def count(self) -> int:
        return 0

    @classmethod
    def of_json(cls, stored: Json) -> "SentPicture":
        return cls(name=stored["name"], legend=stored["legend"], rubric=tuple(stored["rubric"]))
