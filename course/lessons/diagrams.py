"""A block `tape-map`: TOML that holds a session document and says how to show it.

    name      what claims and links call the diagram
    title     what it shows
    caption   what to notice
    until     show the tape after so many edits; without it, after all of them
    pair      two such numbers: two maps, before and after
    lines     the line under each map of a pair
    show      a source tape to draw, in the place of the edit master
    window    {start, end} in frames; without it, the whole tape
    marks     named places, in frames: {"edit in" = 300}
    names     what to call a source on the map: {A = "Tape 3"}

Everything else is the session document (rate, bench, master, sources, edits).
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from course.lessons.front import load_toml
from course.lessons.lesson import Diagram, Panel
from course.lessons.problems import LessonProblem
from exercises.tape import (
    DocumentError,
    Laid,
    Pulses,
    Run,
    Session,
    Source,
    Tape,
    TapeError,
    read_session,
    tape_map,
)

DOCUMENT = ("rate", "bench", "master", "sources", "edits")
PAIR_LINES = ("Before", "After")


def read_diagram(source: str, line: int) -> Diagram:
    """The diagram that the block beginning on `line` describes."""
    given = load_toml(source, line + 1)
    try:
        session = read_session({key: given.pop(key) for key in DOCUMENT if key in given})
        how = Showing.read(given, session)
        return Diagram(
            name=how.name,
            title=how.title,
            caption=how.caption,
            panels=tuple(how.panels(session)),
            session=session,
        )
    except DocumentError as refused:
        raise LessonProblem(line, f"The session is refused at {refused}.") from refused
    except (TypeError, TapeError) as error:
        raise LessonProblem(line, f"The diagram can't be drawn: {error}") from error


def after(session: Session, edits: int) -> Session:
    """The session with its first so many edits only."""
    return replace(session, edits=session.edits[:edits])


def as_tape(source: Source, length: int = 0) -> Tape:
    """A source tape as a tape of its own, its takes where they are; at least `length` long."""
    tape = Tape.blank(max([length, *(take.end for take in source.takes)]))
    for start, end, generation in (
        (take.start, take.end, take.generation) for take in source.takes
    ):
        laid = [Run(start, end, Laid(source.name, start, generation, True))]
        tape = Tape(
            tape.length,
            tape.control.over(start, end, [Run(start, end, Pulses())], cause=None),
            tape.picture.over(start, end, laid, cause=None),
            tape.sound.over(start, end, laid, cause=None),
        )
    return tape


@dataclass(frozen=True, kw_only=True)
class Showing:
    """How a diagram shows its session: every key of the block that is not the session's."""

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
    def read(cls, given: dict[str, Any], session: Session) -> "Showing":
        """Raises TypeError, with a sentence, for what a block may not say."""
        for key, problem in _shape_problems(given, session):
            raise TypeError(f"{key} {problem}.")
        for key in ("pair", "lines"):
            if key in given:
                given[key] = tuple(given[key])
        return cls(**given)

    def panels(self, session: Session) -> list[Panel]:
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

    def _panel(self, tape: Tape, session: Session, line: str = "") -> Panel:
        window = self.window or {}
        drawn = tape_map(tape, session.bench, **window, marks=self.marks, names=self.names)
        return Panel(spec=drawn.as_json(), line=line)


def _shape_problems(given: dict[str, Any], session: Session) -> "list[tuple[str, str]]":
    """What is wrong with each key: that it is missing, unknown, or of the wrong kind."""
    last = len(session.edits)
    kinds = {
        "name": _is_name,
        "title": _is_text,
        "caption": _is_text,
        "until": lambda value: _is_count(value, last),
        "pair": lambda value: _is_two(value) and all(_is_count(each, last) for each in value),
        "lines": lambda value: _is_two(value) and all(map(_is_text, value)),
        "show": lambda value: value in session.sources,
        "window": lambda value: _is_table(value, int) and set(value) == {"start", "end"},
        "marks": lambda value: _is_table(value, int),
        "names": lambda value: _is_table(value, str),
    }
    missing = [(key, "is missing") for key in ("name", "title", "caption") if key not in given]
    unknown = [(key, "is not known here") for key in given if key not in kinds]
    wrong = [
        (key, "is not what it should be")
        for key, value in given.items()
        if key in kinds and not kinds[key](value)
    ]
    return missing + unknown + wrong


def _is_name(value: object) -> bool:
    return isinstance(value, str) and re.fullmatch(r"[a-z0-9-]+", value) is not None


def _is_text(value: object) -> bool:
    return isinstance(value, str) and bool(value.strip())


def _is_count(value: object, last: int) -> bool:
    return type(value) is int and 0 <= value <= last


def _is_two(value: object) -> bool:
    return isinstance(value, list) and len(value) == 2


def _is_table(value: object, kind: type) -> bool:
    return isinstance(value, dict) and all(type(each) is kind for each in value.values())
