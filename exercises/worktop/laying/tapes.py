"""The cassettes of a practical in frames, at a bench."""

from fractions import Fraction

from exercises.drills.asks import Json
from exercises.signal.speech.reel import Reel, reel
from exercises.tape import Bench
from exercises.worktop.practical import BLACK
from exercises.worktop.practical_tape import LogMistake, PracticalTake, PracticalTape
from exercises.worktop.shelf_tape import LoggedTake, LogPlaces, ShelfTape

SPARE = 20  # seconds of tape behind the last take
PAUSE = 1500  # ms between two lines of a take


def laid_tape(told: PracticalTape, bench: Bench) -> ShelfTape:
    takes: list[LoggedTake] = []
    reached = 0
    for take in told.takes:
        takes.append(laid_take(take, told, reached + take.before * bench.rate.nominal, bench))
        reached = takes[-1].end
    figures = {name: getattr(told, name) for name in ("tracking", "skew", "reel", "signal")}
    length = reached + SPARE * bench.rate.nominal
    return ShelfTape(name=told.name, length=length, takes=tuple(takes), **figures)


def laid_take(told: PracticalTake, tape: PracticalTape, start: int, bench: Bench) -> LoggedTake:
    action = start + of_lock(told.run_up, bench)
    end = action + told.lasts * bench.rate.nominal
    return LoggedTake(
        name=told.name,
        start=start,
        action=action,
        end=end,
        shows=told.shows,
        log=told.log,
        lines=told.lines,
        white=tape.white if told.white is None else told.white,
        sound=tape.sound if told.sound is None else told.sound,
        logged=logged(told.mistake, LogPlaces(start=start, action=action, end=end), bench),
    )


def logged(mistake: LogMistake, true: LogPlaces, bench: Bench) -> LogPlaces:
    """Where the shot log has a take."""
    late = mistake.late * bench.rate.nominal
    start = true.start if mistake.run_up is None else true.action - of_lock(mistake.run_up, bench)
    return LogPlaces(start=start + late, action=true.action + late, end=true.end + late)


def of_lock(percent: int, bench: Bench) -> int:
    return bench.lock * percent // 100


def as_source(tape: ShelfTape, bench: Bench) -> Json:
    """As a session document has it."""
    return {"takes": [recorded(take, bench) for take in tape.takes]}


def recorded(take: LoggedTake, bench: Bench) -> Json:
    told: Json = {"start": take.start, "end": take.end}
    if take.shows == BLACK:
        return told | {"levels": "none"}
    told["levels"] = {"white": take.white, "sound": take.sound}
    if take.lines:
        marks = reel_of(take, bench).marks(bench.rate)
        told["sync"] = True
        told["marks"] = {
            "words": [{"start": each.start, "end": each.end} for each in marks.words],
            "breaths": [{"start": each.start, "end": each.end} for each in marks.breaths],
        }
    return told


def reel_of(take: LoggedTake, bench: Bench) -> Reel:
    """What is said, from a second into the action on."""
    begin = round(1000 * Fraction(take.action + bench.rate.nominal) / bench.rate.fraction)
    return reel(*take.lines, begin=begin, pause=PAUSE)
