"""A practical read from its file; whatever is wrong with it is told with the line."""

import re
import tomllib
from pathlib import Path
from typing import Any

from exercises.tape import DocumentError, SoundMode
from exercises.tape.from_json.brief import TRACKS
from exercises.tape.from_json.document_value import DocumentValue
from exercises.worktop.practical import KeptStretch, KnobsLeft, MasterPass, Practical, Way
from exercises.worktop.practical_tape import PracticalTake, PracticalTape
from exercises.worktop.reading.problem import PracticalProblem, line_told
from exercises.worktop.reading.shots import read_earlier, read_shot
from exercises.worktop.reading.tapes import HOUR, figures, listed, read_tape

NAME = re.compile(r"(\d\d)-([a-z]+(?:-[a-z]+)*)")
NAMED = "A practical’s file is named like 03-three-shots.toml."
TEXTS = ("title", "purpose", "brief", "lesson")
PARTS = ("passes", "earlier", "kept", "left", "tolerance", "unaided", "ways")
GAIN, KNOB = (-200, 200), (-20, 20)


def read_practical(path: Path) -> Practical:
    """Raises PracticalProblem. The file's name has its number and slug: `03-three-shots.toml`."""
    named = NAME.fullmatch(path.stem)
    if not named:
        raise PracticalProblem(
            str(path), 1, "A practical’s file is named like 03-three-shots.toml."
        )
    try:
        text = path.read_text(encoding="utf-8")
    except UnicodeDecodeError:
        raise PracticalProblem(str(path), 1, "A practical is UTF-8 text.") from None
    try:
        return practical_of(tomllib.loads(text), slug=named[2], number=int(named[1]))
    except tomllib.TOMLDecodeError as error:
        raise PracticalProblem(str(path), line_told(str(error)), f"{error}.") from None
    except DocumentError as error:
        raise PracticalProblem.at_path(str(path), text, error) from None


def practical_of(document: dict[str, Any], *, slug: str, number: int) -> Practical:
    """Raises DocumentError, naming the path."""
    needed = (*TEXTS, "minutes", "length", "tapes", "shots")
    fields = DocumentValue(document).known_fields(needed, PARTS)
    tapes = tuple(read_tape(each) for each in fields["tapes"].items())
    takes = by_name(fields["tapes"], tapes)
    return Practical(
        slug=slug,
        number=number,
        title=fields["title"].text().strip(),
        purpose=fields["purpose"].text().strip(),
        brief=fields["brief"].text().strip(),
        lesson=fields["lesson"].text(),
        minutes=fields["minutes"].whole(1, 240),
        length=fields["length"].whole(30, HOUR),
        tapes=tapes,
        shots=tuple(read_shot(each, takes) for each in fields["shots"].items()),
        passes=tuple(read_pass(each) for each in listed(fields, "passes")),
        earlier=tuple(read_earlier(each, takes) for each in listed(fields, "earlier")),
        kept=tuple(read_kept(each) for each in listed(fields, "kept")),
        left=read_left(fields["left"]) if "left" in fields else KnobsLeft(),
        unaided="unaided" in fields and fields["unaided"].truth(),
        ways=tuple(Way(each.one_of(list(Way))) for each in listed(fields, "ways")) or (Way.ALONE,),
        tolerance=fields["tolerance"].whole(0, 50) if "tolerance" in fields else 5,
    )


def by_name(given: DocumentValue, tapes: tuple[PracticalTape, ...]) -> dict[str, PracticalTake]:
    """The takes of all tapes; no two tapes or takes have one name."""
    takes = [take for tape in tapes for take in tape.takes]
    for names in ([tape.name for tape in tapes], [take.name for take in takes]):
        for name in names:
            if names.count(name) > 1:
                given.refuse(f"has two that are named {name}")
    return {take.name: take for take in takes}


def read_pass(given: DocumentValue) -> MasterPass:
    fields = given.known_fields(("start", "end", "what"))
    start = fields["start"].whole(0, HOUR)
    end = fields["end"].whole(start + 1, HOUR)
    return MasterPass(start=start, end=end, what=fields["what"].text())


def read_kept(given: DocumentValue) -> KeptStretch:
    fields = given.known_fields(("track", "start", "end"))
    start = fields["start"].whole(0, HOUR)
    track = TRACKS[fields["track"].one_of(TRACKS)]
    return KeptStretch(track=track, start=start, end=fields["end"].whole(start + 1, HOUR))


def read_left(given: DocumentValue) -> KnobsLeft:
    knobs = {"tracking": KNOB, "skew": KNOB, "recorder_tracking": KNOB}
    knobs |= {"picture_gain": GAIN, "sound_gain": GAIN}
    fields = given.known_fields((), (*knobs, "sound_mode"))
    told: dict[str, Any] = figures(fields, knobs)
    if "sound_mode" in fields:
        told["sound_mode"] = SoundMode(fields["sound_mode"].one_of(list(SoundMode)))
    return KnobsLeft(**told)
