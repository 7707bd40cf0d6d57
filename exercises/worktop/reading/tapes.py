"""The cassettes of a practical's file."""

from exercises.signal.footage import FOOTAGE
from exercises.signal.speech.line import lines
from exercises.tape.from_json.document_value import DocumentValue, Fields
from exercises.worktop.laying.tapes import PAUSE
from exercises.worktop.practical_tape import LogMistake, PracticalTake, PracticalTape

HOUR = 3600
TRACK, WHITE, SOUND, RUN_UP = (-90, 90), (20, 130), (-200, 100), (0, 1000)
FIGURES = {
    "tracking": TRACK,
    "skew": TRACK,
    "reel": TRACK,
    "signal": (30, 98),
    "white": WHITE,
    "sound": SOUND,
}
TAKE = {"before": (0, HOUR), "run_up": RUN_UP, "white": WHITE, "sound": SOUND}
USUAL = {"before": 4, "run_up": 180}


def read_tape(given: DocumentValue) -> PracticalTape:
    fields = given.known_fields(("name", "takes"), FIGURES)
    takes = tuple(read_take(each) for each in fields["takes"].items())
    if not takes:
        fields["takes"].refuse("names no take")
    return PracticalTape(name=fields["name"].text(), takes=takes, **figures(fields, FIGURES))


def read_take(given: DocumentValue) -> PracticalTake:
    needed = ("name", "shows", "log", "lasts")
    fields = given.known_fields(needed, (*TAKE, "lines", "mistake"))
    said = [each.one_of(lines()) for each in listed(fields, "lines")]
    lasts = fields["lasts"].whole(1, HOUR)
    if lasts < (long := seconds_said(said)):
        fields["lasts"].refuse(f"must be at least {long}: its lines take so long")
    return PracticalTake(
        name=fields["name"].text(),
        shows=fields["shows"].one_of(FOOTAGE),
        log=fields["log"].text(),
        lasts=lasts,
        lines=tuple(said),
        mistake=read_mistake(fields["mistake"]) if "mistake" in fields else LogMistake(),
        **USUAL | figures(fields, TAKE),
    )


def read_mistake(given: DocumentValue) -> LogMistake:
    bounds = {"late": (-HOUR, HOUR), "run_up": RUN_UP}
    return LogMistake(**figures(given.known_fields((), bounds), bounds))


def seconds_said(said: list[str]) -> int:
    """What a take must last for its lines, with a second before them and one after."""
    if not said:
        return 0
    spoken = sum(lines()[name].length for name in said) + PAUSE * (len(said) - 1)
    return 2 - -spoken // 1000


def figures(fields: Fields, bounds: dict[str, tuple[int, int]]) -> dict[str, int]:
    """Those of them that are told."""
    return {name: fields[name].whole(*bounds[name]) for name in bounds if name in fields}


def listed(fields: Fields, name: str) -> list[DocumentValue]:
    return list(fields[name].items()) if name in fields else []
