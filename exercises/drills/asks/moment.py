from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, ClassVar

from exercises.drills.asks.ask import AnswerRefused, Ask, Json, no_answer, only
from exercises.tape import Rate, TimecodeError, frame_of, label


@dataclass(frozen=True, kw_only=True)
class Moment(Ask):
    """A place on a tape, typed as time code; the answer is its frame.

    `rate` is the label of a `Rate`; `drop` asks for drop-frame code.
    """

    form: ClassVar[str] = "moment"

    rate: str
    drop: bool = False

    def read(self, typed: Sequence[str]) -> int:
        text = only(typed)
        if not text:
            raise AnswerRefused("Give a time code. Nothing has been recorded yet.")
        try:
            frame = frame_of(text, self._rate)
        except TimecodeError as refusal:
            raise AnswerRefused(str(refusal)) from refusal
        if (";" in text) is not self.drop:
            mark = "a semicolon" if self.drop else "a colon"
            raise AnswerRefused(f"Write {mark} before the frames, as on this tape.")
        return frame

    @property
    def _rate(self) -> Rate:
        return next(rate for rate in Rate if rate.label == self.rate)

    @property
    def pattern(self) -> str:
        """How it is written."""
        return "HH:MM:SS;FF" if self.drop else "HH:MM:SS:FF"

    @property
    def frames(self) -> int:
        """Labels in a second."""
        return self._rate.nominal

    def typed(self, answer: int) -> list[str]:
        return [self.in_words(answer)]

    def in_words(self, answer: Any) -> str:
        if type(answer) is not int:
            raise no_answer()
        try:
            return label(answer, self._rate, self.drop)
        except TimecodeError as refusal:
            raise no_answer() from refusal

    def every(self) -> Sequence[int]:
        return [0, 1000, 10_000]

    def count(self) -> int:
        return 0

    @classmethod
    def of_json(cls, stored: Json) -> "Moment":
        return cls(**{name: stored[name] for name in ("name", "legend", "rate", "drop")})
