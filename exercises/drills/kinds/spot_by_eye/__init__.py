"""Spot it by eye: a picture, a pair or a short motion. Which fault, where, or none?"""

from exercises.drills.asks import Json
from exercises.drills.judging.spotted import grade
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.spot_by_eye.answers import RULES, asks, revealed, right_answers
from exercises.drills.kinds.spot_by_eye.compared import EXAMPLES, answered, example, faulty_frames
from exercises.drills.kinds.spot_by_eye.faults import (
    KINDS,
    PictureStretch,
    Where,
    stretches,
    without_measurement,
    worn,
)
from exercises.drills.kinds.spot_by_eye.film import CutFilm
from exercises.drills.kinds.spot_by_eye.form import Form, Showing, showing
from exercises.drills.kinds.spot_by_eye.situations import Situation, drawn
from exercises.drills.media.medium import media
from exercises.drills.media.seen import Screen
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import opening
from exercises.drills.setting.settings import Settings
from exercises.tape import Bench, EditSession, Tape, faults, read_edit_session, tape_map
from exercises.tape.faults.wording import sentence

AROUND = 6  # seconds of the film on either side of the cut that the map shows, at most

# Where a fault lies is told by chance least often of what moves.
FORMS = (*3 * (Form.STILL,), *3 * (Form.PAIR,), *4 * (Form.MOTION,))

ASKED = {
    Form.STILL: "One picture of it is below.",
    Form.PAIR: "Below are a picture from before a cut and one from after it.",
    Form.MOTION: "Below is what the monitor shows around a cut, frame by frame.",
}


def candidate(draw: Draw, settings: Settings) -> Question | None:
    form = draw.pick(FORMS)
    place = draw.pick((Where.BEFORE, Where.AFTER)) if form is Form.STILL else None
    situation, film = drawn(draw, form, place), CutFilm(draw, settings)
    situation.spoil(film)
    return question(situation, film, showing(form, draw, film.cut, place))


def question(situation: Situation, film: CutFilm, showing: Showing) -> Question | None:
    document = film.document()
    session = read_edit_session(document)
    tape = session.recorded()
    found = [
        *stretches(tape, session.bench, showing.start, showing.end),
        *worn(tape, film.worn, showing.start, showing.end),
    ]
    right = right_answers(found, showing)
    if right is None or bool(found) is not situation.is_fault:
        return None
    if found and not faulty_frames(found, showing):
        return None
    rule = RULES[right["fault"]]
    shown, numbers = pictures(film, session, found, showing)
    return Question(
        situation=f"{situation.name}, {showing.form}",
        skill=rule.skill,
        asks=asks(showing.form),
        shown={
            "story": f"{opening(film.scene)} {ASKED[showing.form]}",
            "facts": [["At the cut", film.scene.code(film.cut)], ["Played on", bench(film)]],
            "shows": list(range(2 if showing.form is Form.PAIR else 1)),
        },
        right=right,
        reveals=revealed(right["fault"]),
        rule=rule.at(film.scene.bench),
        media=shown,
        key={
            "session": document,
            "worn": film.worn,
            "happened": happened(tape, session.bench, found),
            "map": mapped(session, tape, film),
            "caption": f"The edit master around the cut at {film.scene.code(film.cut)}",
            **numbers,
        },
    )


def bench(film: CutFilm) -> str:
    return (
        f"{film.scene.room}, {film.scene.rate.label} frames a second; "
        "the monitor is set to show the edges of the picture"
    )


def pictures(
    film: CutFilm, session: EditSession, found: list[PictureStretch], showing: Showing
) -> tuple[list[Json], Json]:
    """Media: those of the question, those that explain it, and an example of each fault.

    Then which number is which: `afterwards` and `examples`.
    """
    screen = Screen(session.recorded(), session.bench, film.footage)
    asked, after = showing.media(screen), answered(screen, found, showing)
    shown = [*asked, *after]
    numbers = list(range(len(asked), len(shown)))
    examples = {}
    for fault in EXAMPLES:
        examples[fault] = len(shown)
        shown.append(example(fault, screen.at(showing.frames[0])))
    return media(*shown), {"afterwards": numbers, "examples": examples}


def happened(tape: Tape, session_bench: Bench, found: list[PictureStretch]) -> list[str]:
    """What the tape model says of it."""
    seen = {each.seen for each in found}
    told = dict.fromkeys(
        sentence(fault)
        for fault in faults(tape, session_bench)
        if fault.kind in KINDS and KINDS[fault.kind] in seen
    )
    sentences = [f"{each[:1].upper()}{each[1:]}." for each in told]
    return sentences or [said for each in found[:1] for said in without_measurement(each, tape)]


def mapped(session: EditSession, tape: Tape, film: CutFilm) -> Json:
    reach = AROUND * session.bench.rate.nominal
    marks = {"cut": film.cut}
    start, end = max(film.cut - reach, film.start - reach // 6), min(film.cut + reach, film.end)
    return tape_map(tape, session.bench, start=start, end=end, marks=marks).as_json()


KIND = Kind(
    slug=slug_of(__name__),
    title="Spot it by eye",
    purpose="A picture from the edit master, or a few on either side of a cut: what is wrong?",
    skills=("seeing-a-bad-edit",),
    lesson="knowing-a-bad-edit",
    revision=4,
    template="drills/judging/spotted.html",
    candidate=candidate,
    grade=grade,
)
