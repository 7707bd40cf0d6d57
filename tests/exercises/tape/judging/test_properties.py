"""What the judge says, against a look at every frame."""

from collections.abc import Callable
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from exercises.tape import Brief, Condition, Kept, Tape, Wanted, judge, play, read_edit_session
from tests.strategies import Document, documents

Draw = Callable[..., Any]


@st.composite
def shots(draw: Draw, length: int, side: Any) -> tuple[Wanted, ...]:
    """Wanted shots in order; often of what the master holds, since that is from A or B, too."""
    cuts = sorted(draw(st.sets(st.integers(0, length), max_size=6)))
    return tuple(
        Wanted(side, draw(st.sampled_from("AB")), first, first + end - start, start)
        for start, end in zip(cuts[::2], cuts[1::2], strict=False)
        for first in (draw(st.integers(0, 12)),)
    )


@st.composite
def judged(draw: Draw) -> tuple[Document, Brief]:
    document = draw(documents())
    length = document["master"]["length"]
    start = draw(st.integers(0, length - 1))
    kept = Kept(
        draw(st.sampled_from(("picture", "sound"))), start, draw(st.integers(start + 1, length))
    )
    wanted = draw(shots(length, "picture")), draw(shots(length, "sound"))
    return document, Brief(*wanted, kept=(kept,))


def held(tape: Tape, track: str, frame: int) -> tuple[str, int, int, bool] | None:
    run = (tape.picture if track == "picture" else tape.sound).at(frame)
    if run is None:
        return None
    laid = run.tail(frame).value
    return laid.source, laid.frame, laid.generation, laid.settled


def frames(ranges: Any) -> set[int]:
    return {frame for each in ranges for frame in range(each.start, each.end)}


@given(judged())
def test_matches_are_the_frames_that_hold_what_is_wanted(asked: tuple[Document, Brief]) -> None:
    document, brief = asked
    session = read_edit_session(document)
    tape = session.recorded()

    judgement = judge(brief, tape, before=session.master, bench=session.bench)

    for track, wanted in (("picture", brief.picture), ("sound", brief.sound)):
        right = {
            frame
            for shot in wanted
            for frame in range(shot.at, shot.end)
            if (held(tape, track, frame) or ("", 0))[:2]
            == (shot.source, shot.in_ + frame - shot.at)
        }
        assert frames(m for m in judgement.matches if m.track == track) == right
        told = [d for d in judgement.differences if d.track == track and d.shot is not None]
        assert frames(told) == frames(_ranges(wanted)) - right


@given(judged())
def test_what_was_kept_is_told_where_it_is_not_as_it_was(asked: tuple[Document, Brief]) -> None:
    document, brief = asked
    session = read_edit_session(document)
    tape = session.recorded()
    (kept,) = brief.kept

    judgement = judge(Brief(kept=brief.kept), tape, before=session.master, bench=session.bench)

    track = tape.picture if kept.track == "picture" else tape.sound
    changed = {
        frame
        for frame in range(kept.start, kept.end)
        if held(tape, kept.track, frame) != held(session.master, kept.track, frame)
        or (held(tape, kept.track, frame) and track.cause(frame) is not None)
    }
    assert frames(judgement.differences) == changed


@given(judged())
def test_nothing_plays_badly_that_play_calls_clean(asked: tuple[Document, Brief]) -> None:
    document, brief = asked
    session = read_edit_session(document)
    tape = session.recorded()

    judgement = judge(brief, tape, before=session.master, bench=session.bench)

    clean = [state for state in play(tape, session.bench) if state.state is Condition.CLEAN]
    assert not frames(clean) & frames(judgement.states)


def _ranges(wanted: tuple[Wanted, ...]) -> list[Any]:
    return [Kept(shot.track, shot.at, shot.end) for shot in wanted]
