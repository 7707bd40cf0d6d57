"""What came of a session's edits, worked out once, when the question is made."""

from exercises.drills.asks import Json
from exercises.drills.kinds.spot_the_bad_edit.answers import ANOTHER, LEAVE, TRACKING
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase
from exercises.drills.kinds.spot_the_bad_edit.mends import Mend
from exercises.drills.kinds.spot_the_bad_edit.told import CaseTold
from exercises.drills.setting.change import Mode
from exercises.drills.setting.phrases import span
from exercises.tape import Tape, tape_map


def consequences(case: EditsCase, right_mend: str, window: tuple[int, int]) -> Json:
    """What happened; the tape as it is and once mended; what each recording would mend."""
    told, faulty = CaseTold(case), right_mend not in (LEAVE, TRACKING)
    mended = Mend(case, Mode(right_mend)).result().tape if right_mend in list(Mode) else None
    return {
        "happened": told.happened(),
        "map": _map(case.last.tape, case, window),
        "caption": f"The edit master as it is, {span(*window, case.bench)}",
        "mended": mended and _map(mended, case, window),
        "mended_caption": "The edit master once it is mended",
        "mends": mends(told) if faulty else {},
    }


def mends(told: CaseTold) -> dict[str, str]:
    """What would come of each recording."""
    return {mode.value: told.mended(mode) for mode in Mode} | {ANOTHER: told.on_another_tape()}


def _map(tape: Tape, case: EditsCase, window: tuple[int, int]) -> Json:
    start, end = window
    marks = {"film in": case.last.start, "film out": case.last.end}
    return tape_map(tape, case.bench, start=start, end=end, marks=marks).as_json()
