"""What is told before the answer: the edits, the film, and what is noticed when it is played."""

from collections.abc import Sequence

from exercises.drills.asks import Json
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase
from exercises.drills.kinds.spot_the_bad_edit.playback import Playing
from exercises.drills.setting.job import Job
from exercises.drills.setting.phrases import code, span
from exercises.drills.setting.quay_street import Shot

BEFORE, AFTER = 4, 9  # seconds of tape played before the film and after it


def shown(
    jobs: Sequence[Job], case: EditsCase, *, story: str, bench: str, remark: str = ""
) -> Json:
    """`bench` is its figures in words, `remark` what was noticed besides."""
    start, end = window(jobs, case)
    film = span(case.last.start, case.last.end, case.bench)
    return {
        "story": story,
        "edits": [job.in_words(case.bench) for job in jobs],
        "film": f"The film is to run {film}. "
        "Any shot can be had again, from a take with enough run-up."
        + (f" {remark}" if remark else ""),
        "bench": bench,
        "caption": f"What is noticed when the edit master is played {span(start, end, case.bench)}",
        "rows": noticed(jobs, case),
    }


def noticed(jobs: Sequence[Job], case: EditsCase) -> list[list[str]]:
    """What is seen and heard of the film, and never why."""
    played = Playing(case.last.tape, case.bench, clips(jobs), case.worn, case.off)
    return [
        [code(row.start, case.bench), row.picture, row.sound, row.lock]
        for row in played.rows(*window(jobs, case))
    ]


def window(jobs: Sequence[Job], case: EditsCase) -> tuple[int, int]:
    """The part of the master that is played."""
    start, end = min(job.at for job in jobs), max(job.end for job in jobs)
    second = case.bench.rate.nominal
    return max(0, start - BEFORE * second), min(case.master.length, end + AFTER * second)


def clips(jobs: Sequence[Job]) -> dict[str, list[tuple[int, int, Shot]]]:
    """For each source tape, which of its frames show what."""
    found: dict[str, list[tuple[int, int, Shot]]] = {}
    for job in jobs:
        clip = job.clip
        found.setdefault(clip.tape, []).append((clip.in_, clip.out, clip.shot))
    return found
