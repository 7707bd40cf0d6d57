"""The stretches that are asked about, cut wherever anything might change for anybody."""

from collections.abc import Sequence
from itertools import pairwise

from exercises.drills.asks import Column, Option, Table
from exercises.drills.kinds.what_will_play.showing import (
    BLANK,
    NO_LOCK,
    NO_PICTURE,
    NO_SOUND,
    ROLLS,
    UNSTEADY,
    PlayedStretch,
    at,
)
from exercises.drills.kinds.what_will_play.visit import Visit
from exercises.drills.setting.phrases import begun

FEWEST, MOST = 8, 12
BLACK = "black|silence"
SHOTS = 10  # to choose from, at least: of few, any would be right more often than a fault
FAULTS = (
    Option(value=BLANK, text="Snow, or muted: the tape is blank"),
    Option(value=NO_LOCK, text="Drifts and tears, can’t be used: recorded without pulses"),
    Option(value=ROLLS, text="Rolls: the pulses have only just begun"),
    Option(value=UNSTEADY, text="Unsteady: a machine was not locked while copying"),
    Option(value=NO_PICTURE, text="Pulses, but no picture"),
    Option(value=NO_SOUND, text="Picture, but no sound"),
)
APART = 10  # frames between a cut that nothing asks for and its neighbours


def cuts(visit: Visit, versions: Sequence[Sequence[PlayedStretch]]) -> list[int] | None:
    """Where the stretches begin and end; None where they would be too many.

    Cuts that no version needs are added until there are enough: a cut tells nothing. None of them
    is on blank tape, and blank tape at the end for anybody isn't asked about: else
    that would be right most often.
    """
    needed = {edge for shown in versions for each in shown for edge in (each.start, each.end)}
    if all(shown[-1].what == BLANK for shown in versions):
        needed.remove(max(needed))
    if len(needed) > MOST + 1:
        return None
    for cut in _possible(visit):
        if len(needed) > FEWEST:
            break
        apart = all(abs(cut - other) >= APART for other in needed)
        if apart and cut < max(needed) and at(versions[0], cut) != BLANK:
            needed.add(cut)
    return sorted(needed) if len(needed) > FEWEST else None


def _possible(visit: Visit) -> list[int]:
    """Places within the window where an edit might change something, in any order."""
    start, end = visit.window
    bench, second = visit.session.bench, visit.scene.rate.nominal
    places = []
    for job in visit.jobs:
        for edge in (job.at, job.end):
            places += [edge, edge + bench.relock, edge + bench.erase_gap, edge + bench.lock]
            places += [edge - second, edge - 3 * second, edge + 3 * second]
    inside = [place for place in dict.fromkeys(places) if start < place < end]
    return visit.scene.draw.shuffled(inside)


def options(visit: Visit, versions: Sequence[Sequence[PlayedStretch]]) -> tuple[Option, ...]:
    """The faults, then black, what anybody expects to play and more that might, in any order."""
    plays = {each.what for shown in versions for each in shown if "|" in each.what} | {BLACK}
    for what in visit.scene.draw.shuffled(list(might_play(visit))):
        if len(plays) < SHOTS:
            plays.add(what)
    texts = {what: _text(what) for what in visit.scene.draw.shuffled(sorted(plays))}
    return (*FAULTS, *(Option(value=what, text=text) for what, text in texts.items()))


def might_play(visit: Visit) -> dict[str, None]:
    """All that was laid and is laid, and the picture of one with the sound of another."""
    laid = [clip.shot for clip, _ in visit.laid]
    new = [job.clip.shot for job in visit.jobs]
    mixed = [pair for one in laid for other in new for pair in ((one, other), (other, one))]
    pairs = [*((shot, shot) for shot in (*laid, *new)), *mixed]
    return dict.fromkeys(f"{seen.picture}|{heard.sound}" for seen, heard in pairs)


def _text(what: str) -> str:
    picture, sound = what.split("|")
    return begun(
        picture if (picture, sound) == ("black", "silence") else f"{picture}, with {sound}"
    )


def table(visit: Visit, edges: Sequence[int], choices: tuple[Option, ...]) -> Table:
    return Table(
        name="plays",
        legend="What does the edit master play afterwards, on each stretch?",
        head="Stretch",
        lines=tuple(" to ".join(map(visit.scene.code, stretch)) for stretch in pairwise(edges)),
        columns=(Column(title="What plays", options=choices),),
    )
