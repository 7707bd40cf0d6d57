"""How a diagram shows its session: every key of its block that is not the session's."""

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any, Self

from course.lessons.lesson import Panel
from exercises.tape import EditSession, Laid, Pulses, Run, Source, Tape, tape_map

PAIR_LINES = ("Before", "After")


@dataclass(frozen=True, kw_only=True)
class Showing:
    """See `diagrams` for what each key says."""

    name: str
    title: str
    caption: str
    until: int | None = None
    pair: tuple[int, int] | None = None
    lines: tuple[str, str] = PAIR_LINES
    show: str | None = None
    window: Mapping[str, int] | None = None
    marks: Mapping[str, int] | None = None
    names: Mapping[str, str] | None = None

    @classmethod
    def read(cls, given: dict[str, Any], session: EditSession) -> Self:
        """Raises TypeError, with a sentence, for what a block may not say."""
        for key in ("name", "title", "caption"):
            if key not in given:
                raise TypeError(f"{key} is missing.")
        for key, value in given.items():
            if key not in cls.__dataclass_fields__:
                raise TypeError(f"{key} is not known here.")
            if not _may_be(key, value, session):
                raise TypeError(f"{key} is not what it should be.")
        return cls(**given)

    def panels(self, session: EditSession) -> list[Panel]:
        if self.pair is not None:
            return [
                self._panel(after(session, edits).recorded(), session, line)
                for edits, line in zip(self.pair, self.lines, strict=True)
            ]
        if self.show is not None:
            ends = self.window["end"] if self.window else 0
            return [self._panel(as_tape(session.sources[self.show], ends), session)]
        shown = session if self.until is None else after(session, self.until)
        return [self._panel(shown.recorded(), session)]

    def _panel(self, tape: Tape, session: EditSession, line: str = "") -> Panel:
        window = self.window or {"start": 0, "end": tape.length}
        drawn = tape_map(
            tape,
            session.bench,
            start=window["start"],
            end=window["end"],
            marks=self.marks,
            names=self.names,
        )
        return Panel(spec=drawn.as_json(), line=line)


def after(session: EditSession, edits: int) -> EditSession:
    """The session with its first so many edits only."""
    return replace(session, edits=session.edits[:edits])


def as_tape(source: Source, length: int = 0) -> Tape:
    """A source tape as a tape of its own, its takes where they are; at least `length` long."""
    tape = Tape.blank(max([length, *(take.end for take in source.takes)]))
    for take in source.takes:
        place = (take.start, take.end)
        laid = [Run(*place, Laid(source.name, take.start, take.generation, True))]
        tape = Tape(
            tape.length,
            tape.control.over(*place, [Run(*place, Pulses())], cause=None),
            tape.picture.over(*place, laid, cause=None),
            tape.sound.over(*place, laid, cause=None),
        )
    return tape


def _may_be(key: str, value: Any, session: EditSession) -> bool:
    """Whether a key of the block may have this value."""
    last = len(session.edits)
    match key:
        case "name":
            return _is_text(value) and re.fullmatch(r"[a-z0-9-]+", value) is not None
        case "until":
            return _is_count(value, last)
        case "pair":
            return _is_two(value) and all(_is_count(edits, last) for edits in value)
        case "lines":
            return _is_two(value) and all(map(_is_text, value))
        case "show":
            return value in session.sources
        case "window":
            return _is_table(value, int) and set(value) == {"start", "end"}
        case "marks":
            return _is_table(value, int)
        case "names":
            return _is_table(value, str)
        case _:
            return _is_text(value)


def _is_text(value: object) -> bool:
    return isinstance(value, str) and bool(value.strip())


def _is_count(value: object, last: int) -> bool:
    return type(value) is int and 0 <= value <= last


def _is_two(value: object) -> bool:
    return isinstance(value, list) and len(value) == 2


def _is_table(value: object, kind: type) -> bool:
    return isinstance(value, dict) and all(type(each) is kind for each in value.values())
