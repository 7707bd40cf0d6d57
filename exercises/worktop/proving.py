"""Whether a practical can be done: laid out and planned at the usual benches and the hardest.

What is wrong is told as a DocumentError with the path in the practical's own file.
"""

import re
from collections.abc import Iterator
from itertools import chain

from exercises.drills.setting.settings import LONGEST_ERASE_GAP, PRE_ROLL, Settings
from exercises.tape import Bench, DocumentError, NoPlan, Rate, TooMuchWork
from exercises.worktop.laying_out import Layout
from exercises.worktop.practical import Practical
from exercises.worktop.set_up import SetUp
from exercises.worktop.worktop import FURTHEST, REEL, STEP_TRACKING

OWN_PATHS = {"brief.untouched": "kept", "master.recorded": "passes", "edits": "earlier"}
WANTED = re.compile(r"brief\.(picture|sound)\[\d+\]")


def prove(practical: Practical) -> None:
    """Raises DocumentError for the first thing that is wrong."""
    for settings in proved_at():
        layout = Layout(practical, settings)
        refuse_what_ends_late(layout)
        refuse_what_was_never_logged(layout)
        refuse_what_no_control_reaches(layout)
        try:
            set_up = layout.set_up()
            refuse_what_has_no_plan(set_up, settings)
        except DocumentError as error:
            raise in_own_terms(error) from None


def proved_at() -> Iterator[Settings]:
    """Machines that need less than the usual ones are easier to work with."""
    for rate in (Rate.R25, Rate.R29_97):
        yield Settings.usual(rate)
        yield hardest(rate)


def hardest(rate: Rate) -> Settings:
    """A bench that needs the most that can be worked with."""
    longest = PRE_ROLL[1] * rate.nominal
    gap = LONGEST_ERASE_GAP * rate.nominal
    bench = Bench(rate, lock=longest, relock=longest, erase_gap=gap)
    return Settings(bench=bench, pre_roll=longest, source_run_up=longest)


def refuse_what_ends_late(layout: Layout) -> None:
    told, second = layout.practical, layout.second
    earlier = [each.shot for each in told.earlier]
    for name, shots in (("shots", told.shots), ("earlier edits", earlier)):
        end = max((shot.end for shot in layout.shots.laid(shots)), default=0)
        if end > told.length * second:
            least = -(-end // second)
            raise DocumentError("length", f"must be at least {least}: the {name} end there")
    for name, number, each in chain(
        (("passes", number, each.end) for number, each in enumerate(told.passes)),
        (("kept", number, each.end) for number, each in enumerate(told.kept)),
    ):
        if each > told.length:
            problem = f"is behind the end of the master, which is {told.length} long"
            raise DocumentError(f"{name}[{number}].end", problem)


def refuse_what_was_never_logged(layout: Layout) -> None:
    """A log has no places before the beginning of a tape."""
    for number, tape in enumerate(layout.tapes):
        for index, take in enumerate(tape.takes):
            if take.logged.start < 0:
                path = f"tapes[{number}].takes[{index}].mistake"
                raise DocumentError(path, "has the take begin before its tape does")


def refuse_what_no_control_reaches(layout: Layout) -> None:
    furthest = FURTHEST * STEP_TRACKING
    for number, tape in enumerate(layout.tapes):
        at_end = tape.tracking + tape.reel * tape.length / layout.second / REEL
        if abs(at_end) > furthest:
            problem = f"leaves tracking {round(at_end)} % off at the end of the tape"
            reach = f"the player’s control reaches {furthest} %"
            raise DocumentError(f"tapes[{number}].reel", f"{problem}; {reach}")


def refuse_what_has_no_plan(set_up: SetUp, settings: Settings) -> None:
    session = set_up.session
    assert session.brief is not None  # noqa: S101 - every practical has one
    try:
        plan = session.planned(session.brief)
    except TooMuchWork:
        raise DocumentError("shots", "take too much work to plan: ask for fewer") from None
    if isinstance(plan, NoPlan):
        problem = f"can’t be made with {settings.in_words}: {' '.join(plan.reasons)}"
        raise DocumentError("shots", problem)
    if not plan.recordings:
        raise DocumentError("shots", "are on the master already: nothing is left to record")


def in_own_terms(error: DocumentError) -> DocumentError:
    """A refusal of the session document, as one of the file that it was made from."""
    path = error.path
    for theirs, own in OWN_PATHS.items():
        if path.startswith(theirs):
            path = own + path.removeprefix(theirs)
    problem = WANTED.sub(r"a shot on the \1 track", error.problem)
    return DocumentError(path, problem)
