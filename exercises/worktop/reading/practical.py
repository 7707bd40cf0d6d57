"""A practical read from its file; whatever is wrong with it is told with the line."""

import tomllib
from pathlib import Path
from typing import Any

from exercises.signal.footage import FOOTAGE
from exercises.signal.speech.line import lines
from exercises.tape import DocumentError, SoundMode
from exercises.tape.from_json.brief import TRACKS
from exercises.tape.from_json.document_value import DocumentValue, Fields
from exercises.worktop.practical import (
    EarlierEdit,
    KeptStretch,
    KnobsLeft,
    MasterPass,
    Practical,
    PracticalTake,
    PracticalTape,
    Way,
)
from exercises.worktop.reading.places import line_of
from exercises.worktop.reading.shots import read_shot

TEXTS = ("title", "purpose", "brief", "lesson")
PARTS = ("tapes", "shots", "passes", "earlier", "kept", "left", "tolerance", "unaided", "ways")
GAIN, TRACK, KNOB = (-600, 600), (-90, 90), (-20, 20)
HOUR = 3600


class PracticalProblem(ValueError):
    """What is wrong with a practical's file, and where: `file`, `line`, `problem`."""

    def __init__(self, file: str, line: int, problem: str) -> None:
        super().__init__(f"{file}:{line}: {problem}")
        self.file, self.line, self.problem = file, line, problem


def read_practical(path: Path) -> Practical:
    """Raises PracticalProblem. The file's name has its number and slug: `03-three-shots.toml`."""
    text = path.read_text(encoding="utf-8")
    try:
        document = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise PracticalProblem(path.name, line_told(str(error)), str(error)) from None
    number, _, slug = path.stem.partition("-")
    try:
        return practical_of(document, slug=slug, number=int(number))
    except DocumentError as error:
        problem = f"{error.path} {error.problem}."
        raise PracticalProblem(path.name, line_of(text, error.path), problem) from None


def practical_of(document: dict[str, Any], *, slug: str, number: int) -> Practical:
    """Raises DocumentError, naming the path."""
    fields = DocumentValue(document).known_fields((*TEXTS, "minutes", "length", "tapes"), PARTS)
    tapes = tuple(read_tape(each) for each in fields["tapes"].items())
    takes = {take.name: take for tape in tapes for take in tape.takes}
    return Practical(
        slug=slug,
        number=number,
        **{name: fields[name].text().strip() for name in TEXTS},
        minutes=fields["minutes"].whole(1, 240),
        length=fields["length"].whole(30, HOUR),
        tapes=tapes,
        shots=tuple(read_shot(each, takes) for each in listed(fields, "shots")),
        passes=tuple(read_pass(each) for each in listed(fields, "passes")),
        earlier=tuple(read_earlier(each, takes) for each in listed(fields, "earlier")),
        kept=tuple(read_kept(each) for each in listed(fields, "kept")),
        left=read_left(fields["left"]) if "left" in fields else KnobsLeft(),
        tolerance=fields["tolerance"].whole(0, 50) if "tolerance" in fields else 5,
        unaided="unaided" in fields and fields["unaided"].truth(),
        ways=tuple(Way(each.one_of(list(Way))) for each in listed(fields, "ways")) or (Way.ALONE,),
    )


def listed(fields: Fields, name: str) -> list[DocumentValue]:
    return list(fields[name].items()) if name in fields else []


def read_tape(given: DocumentValue) -> PracticalTape:
    figures = {
        "tracking": TRACK,
        "skew": TRACK,
        "reel": TRACK,
        "signal": (30, 98),
        "white": (20, 130),
        "sound": (-300, 100),
    }
    fields = given.known_fields(("name", "takes"), figures)
    told = {name: fields[name].whole(*figures[name]) for name in figures if name in fields}
    takes = tuple(read_take(each) for each in fields["takes"].items())
    return PracticalTape(name=fields["name"].text(), takes=takes, **told)


def read_take(given: DocumentValue) -> PracticalTake:
    fields = given.known_fields(("name", "shows", "log", "lasts"), ("before", "run_up", "lines"))
    return PracticalTake(
        name=fields["name"].text(),
        shows=fields["shows"].one_of(["black", *FOOTAGE]),
        log=fields["log"].text(),
        before=fields["before"].whole(0, HOUR) if "before" in fields else 4,
        run_up=fields["run_up"].whole(0, 1000) if "run_up" in fields else 180,
        lasts=fields["lasts"].whole(1, HOUR),
        lines=tuple(each.one_of(lines()) for each in listed(fields, "lines")),
    )


def read_earlier(given: DocumentValue, takes: dict[str, PracticalTake]) -> EarlierEdit:
    fields = given.known_fields(("shot", "mode"), ("tracking", "gain"))
    return EarlierEdit(
        shot=read_shot(fields["shot"], takes),
        mode="assemble"
        if fields["mode"].one_of(("assemble", "insert")) == "assemble"
        else "insert",
        tracking=fields["tracking"].whole(*TRACK) if "tracking" in fields else 0,
        gain=fields["gain"].whole(*GAIN) if "gain" in fields else 0,
    )


def read_pass(given: DocumentValue) -> MasterPass:
    fields = given.known_fields(("start", "end", "what"))
    start = fields["start"].whole(0, HOUR)
    return MasterPass(
        start=start, end=fields["end"].whole(start + 1, HOUR), what=fields["what"].text()
    )


def read_kept(given: DocumentValue) -> KeptStretch:
    fields = given.known_fields(("track", "start", "end"))
    start = fields["start"].whole(0, HOUR)
    track = TRACKS[fields["track"].one_of(TRACKS)]
    return KeptStretch(track=track, start=start, end=fields["end"].whole(start + 1, HOUR))


def read_left(given: DocumentValue) -> KnobsLeft:
    knobs = {"tracking": KNOB, "skew": KNOB, "recorder_tracking": KNOB}
    gains = {"picture_gain": GAIN, "sound_gain": GAIN}
    fields = given.known_fields((), (*knobs, *gains, "sound_mode"))
    told: dict[str, Any] = {
        name: fields[name].whole(*least_most)
        for name, least_most in (knobs | gains).items()
        if name in fields
    }
    if "sound_mode" in fields:
        told["sound_mode"] = SoundMode(fields["sound_mode"].one_of(list(SoundMode)))
    return KnobsLeft(**told)


def line_told(error: str) -> int:
    """The line that a message of the TOML reader names: “… (at line 3, column 1)”."""
    _, _, told = error.partition("at line ")
    number = told.partition(",")[0]
    return int(number) if number.isdigit() else 1
