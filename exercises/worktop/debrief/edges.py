"""Places as the edit sheet has them: a brief with a tolerance judges a few frames less."""

from exercises.drills.asks import Json
from exercises.drills.setting.phrases import code
from exercises.worktop.debrief.proceedings import Proceedings


def on_the_sheet(start: int, end: int, run: Proceedings) -> tuple[int, int]:
    """A range reaching to the edges of wanted shots that it misses by their tolerance at most."""
    wanted = run.brief.wanted
    starts = [shot.at for shot in wanted if 0 <= start - shot.at <= shot.tolerance]
    ends = [shot.end for shot in wanted if 0 <= shot.end - end <= shot.tolerance]
    return max(starts, default=start), min(ends, default=end)


def told_place(start: int, end: int, run: Proceedings) -> Json:
    """In frames as it was judged (`start`, `end`), in time code as the sheet has it.

    Of differences and states: faults are judged to their own edges, and are told by `place`.
    """
    first, last = on_the_sheet(start, end, run)
    told = {"starts": code(first, run.bench), "ends": code(last, run.bench)}
    return {"start": start, "end": end, **told}
