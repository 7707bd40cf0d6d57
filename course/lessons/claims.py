"""What a lesson claims, put to the tape model.

A claim of the front matter names one of `CHECKS` and what to call it with. The answer
must be the claim's `expect`. Where a check looks at a diagram, it is one of the lesson's
own, by name, so that the sentence and the drawing beside it can't part ways.
"""

import math
from collections.abc import Callable, Iterator
from typing import Any

from course.lessons.diagrams import after
from course.lessons.lesson import Claim, Lesson
from exercises.drills.change import Change, Mode
from exercises.drills.wants import SIDES, Side, Want, clean, given, side
from exercises.tape import Bench, Laid, Rate, Session, Tape, Track, record

Answer = str | int | bool
Check = Callable[..., Answer]


class ClaimProblem(ValueError):
    """A claim that can't be put to the model, or that the model does not confirm."""


def confirm(lesson: Lesson, claim: Claim) -> None:
    """Raise ClaimProblem, with a sentence, unless the model answers what is expected."""
    check = CHECKS.get(claim.check)
    if check is None:
        raise ClaimProblem(f"There is no check “{claim.check}”; there are {', '.join(CHECKS)}.")
    try:
        answer = check(lesson, **claim.given)
    except (LookupError, TypeError, ValueError) as error:
        raise ClaimProblem(f"The claim can't be checked: {error}.") from error
    if answer != claim.expect or type(answer) is not type(claim.expect):
        raise ClaimProblem(
            f"“{claim.text}”: expected {claim.expect!r}, the tape model says {answer!r}."
        )


def duration(frames: int, rate: Rate) -> str:
    """Frames in words: “2 seconds”, “1 second 5 frames”, “3 frames”."""
    seconds, rest = divmod(frames, rate.nominal)
    return " ".join(
        f"{count} {word}{'' if count == 1 else 's'}"
        for count, word in ((seconds, "second"), (rest, "frame"))
        if count or (word == "second" and not frames)
    )


# --- Benches and chains of copies -----------------------------------------------


def bench_figure(lesson: Lesson, *, figure: str, rate: str) -> Answer:
    """A default of the bench: lock, relock or erase_gap."""
    bench = Bench.default(Rate(rate))
    return duration(getattr(bench, figure), bench.rate)


def pulses_a_second(lesson: Lesson, *, rate: str) -> Answer:
    return f"{float(Rate(rate).fraction):.2f}".removesuffix(".00")


def pulse_spacing(lesson: Lesson, *, millimetres_a_second: float, rate: str) -> Answer:
    """Millimetres of tape between two pulses, one pulse a frame."""
    return f"{millimetres_a_second / float(Rate(rate).fraction):.2f}"


def chain_snr(lesson: Lesson, *, chain: list[float]) -> Answer:
    """Signal-to-noise in dB through a chain of recordings: their noise powers add."""
    return f"{-10 * math.log10(sum(10 ** (-each / 10) for each in chain)):.1f}"


def noise_grade(lesson: Lesson, *, grade: int) -> Answer:
    """Signal-to-noise in dB at a grade of ITU-R BT.500, by the CCIR formula."""
    return f"{23 - grade + 1.1 * grade**2:.1f}"


# --- The lesson's diagrams --------------------------------------------------------


def state_length(
    lesson: Lesson,
    *,
    state: str,
    edit: int | None = None,
    within: list[int] | None = None,
    **at: Any,
) -> Answer:
    """How long a state lasts, all its stretches together.

    With `edit`, only where that edit, by index, has caused it; with `within`, only the
    stretches that lie between two frames.
    """
    session = _session(lesson, **at)
    first, last = within or (0, session.master.length)
    stretches = [
        min(each.end, last) - max(each.start, first)
        for each in session.played()
        if each.state == state and (edit is None or each.edit == edit)
    ]
    return duration(sum(length for length in stretches if length > 0), session.bench.rate)


def faults_by(lesson: Lesson, *, edit: int, states: list[str], **at: Any) -> Answer:
    """How many stretches are in one of these states because of an edit, by index."""
    played = _session(lesson, **at).played()
    return sum(each.edit == edit and each.state in states for each in played)


def state_at(lesson: Lesson, *, frame: int, **at: Any) -> Answer:
    played = _session(lesson, **at).played()
    return next(str(each.state) for each in played if each.start <= frame < each.end)


def laid_at(lesson: Lesson, *, track: str, frame: int, **at: Any) -> Answer:
    """The source that a picture or sound track holds at a frame, or "nothing"."""
    run = _side(_session(lesson, **at), track).at(frame)
    return "nothing" if run is None else run.value.source


def generation_at(lesson: Lesson, *, track: str, frame: int, **at: Any) -> Answer:
    run = _side(_session(lesson, **at), track).at(frame)
    return 0 if run is None else run.value.generation


def track_unchanged(lesson: Lesson, *, track: str, before: int, **at: Any) -> Answer:
    """Whether a track holds the same as after the first `before` edits."""
    now, then = (each.recorded() for each in (_session(lesson, **at), _before(lesson, before, at)))
    if track == "control":
        return now.control.runs == then.control.runs
    return side(now, _SIDE[track]).runs == side(then, _SIDE[track]).runs


def recorded_over(lesson: Lesson, *, track: str, before: int, **at: Any) -> Answer:
    """How much of what a track held after `before` edits is no longer there."""
    then, session = _before(lesson, before, at), _session(lesson, **at)
    lost = [
        frame
        for run in _side(then, track).runs
        for frame in range(run.start, run.end)
        if _content(_side(session, track), frame) != _content(_side(then, track), frame)
    ]
    return duration(len(lost), session.bench.rate)


def hole_length(lesson: Lesson, *, between: list[int], **at: Any) -> Answer:
    """How much tape between two frames has no pulses."""
    return state_length(lesson, state="no-control", within=between, **at)


def run_up(lesson: Lesson, *, edit: int, tape: str, **at: Any) -> Answer:
    """The run-up that an edit, by index, has on its source tape or on the edit master."""
    session = _session(lesson, **at)
    made = session.edits[edit]
    if tape == "source":
        return duration(made.source.run_up(made.in_), session.bench.rate)
    return duration(after(session, edit).recorded().run_up(made.at), session.bench.rate)


def edit_length(lesson: Lesson, *, edit: int, **at: Any) -> Answer:
    session = _session(lesson, **at)
    made = session.edits[edit]
    return duration(made.out - made.in_, session.bench.rate)


def right_modes(
    lesson: Lesson, *, edit: int, change: list[str], keep_behind: bool, **at: Any
) -> Answer:
    """The modes that make an edit, by index, so that all that is wanted plays cleanly.

    Wanted are the new frames on the tracks to `change`, and all that played cleanly
    before, on the other track and before the edit in; behind it, if `keep_behind`.
    """
    session = _session(lesson, **at)
    tape, made = after(session, edit).recorded(), session.edits[edit]
    wanted = Change(
        source=made.source,
        in_=made.in_,
        out=made.out,
        at=made.at,
        tracks=tuple(_SIDE[track] for track in change),
    )
    wants = list(_wants(wanted, tape, session.bench, keep_behind=keep_behind))
    right = [
        mode.value
        for mode in Mode
        if given(wants, record(tape, wanted.edit(mode), session.bench), session.bench)
    ]
    return ", ".join(right) or "none"


def _wants(change: Change, tape: Tape, bench: Bench, *, keep_behind: bool) -> Iterator[Want]:
    for track in SIDES:
        if track in change.tracks:
            yield Want(
                track=track,
                start=change.at,
                end=change.end,
                source=change.source.name,
                frame=change.in_,
                new=True,
            )
            yield from clean(tape, bench, track, 0, change.at)
        elif keep_behind:
            yield from clean(tape, bench, track, 0, change.end)
        if keep_behind:
            yield from clean(tape, bench, track, change.end)


def _session(lesson: Lesson, *, diagram: str, edits: int | None = None) -> Session:
    """The session of a diagram of the lesson, with its first `edits` only, if told."""
    session = lesson.diagrams()[diagram].session
    return session if edits is None else after(session, edits)


def _before(lesson: Lesson, before: int, at: dict[str, Any]) -> Session:
    return _session(lesson, **{**at, "edits": before})


def _side(session: Session, track: str) -> Track[Laid]:
    return side(session.recorded(), _SIDE[track])


def _content(track: Track[Laid], frame: int) -> tuple[str, int] | None:
    run = track.at(frame)
    return None if run is None else (run.value.source, run.tail(frame).value.frame)


_SIDE: dict[str, Side] = {track: track for track in SIDES}

CHECKS: dict[str, Check] = {
    "bench-figure": bench_figure,
    "chain-snr": chain_snr,
    "edit-length": edit_length,
    "faults-by": faults_by,
    "generation-at": generation_at,
    "hole-length": hole_length,
    "laid-at": laid_at,
    "noise-grade": noise_grade,
    "pulse-spacing": pulse_spacing,
    "pulses-a-second": pulses_a_second,
    "recorded-over": recorded_over,
    "right-modes": right_modes,
    "run-up": run_up,
    "state-at": state_at,
    "state-length": state_length,
    "track-unchanged": track_unchanged,
}
