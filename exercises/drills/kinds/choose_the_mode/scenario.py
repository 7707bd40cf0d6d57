"""A master and a wanted change, with all that a right recording must give and must leave."""

from collections.abc import Collection, Iterator
from dataclasses import dataclass, replace

from exercises.drills.asks import Json
from exercises.drills.judging.rules import Rule
from exercises.drills.setting.change import Change
from exercises.drills.setting.scene import Clip, Scene
from exercises.tape import SIDES, Bench, EditSession, Side, Tape, read_edit_session, record
from exercises.tape.judging import Demand, playing


@dataclass(frozen=True, slots=True)
class Task:
    """A change wanted on a master, and all that the tape must give once it is made."""

    bench: Bench
    master: Tape
    change: Change
    wants: tuple[Demand, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Scenario:
    """A question before it is asked: a scene, its task, and the words around them.

    `story` tells how the master came to be, `wish` what is wanted of it; `rule` and
    `instead` (what could be done where no mode will do) are for after the answer.
    """

    scene: Scene
    document: Json
    clip: Clip
    task: Task
    story: str
    wish: str
    rule: Rule
    instead: str


def scenario(
    scene: Scene,
    clip: Clip,
    at: int,
    *,
    story: str,
    wish: str,
    rule: Rule,
    instead: str = "",
    tracks: tuple[Side, ...] = SIDES,
    loose: tuple[Side, ...] = (),
    free_from: int | None = None,
    mixed: tuple[int, int] | None = None,
    pushed: bool = False,
) -> Scenario:
    """The scenario in which a clip is wanted at a master frame.

    Everything that plays must stay, on both tracks, apart from what the clip replaces on
    the wanted `tracks`, what it may replace on `loose` ones, and all from `free_from` on.
    `mixed` is a range in which the new picture is to be mixed with another; `pushed` asks
    for what follows to move later.
    """
    document = scene.document()
    session = read_edit_session(document)
    master = replayed(session)
    source = session.sources[clip.tape]
    change = Change(source=source, in_=clip.in_, out=clip.out, at=at, tracks=tracks)
    kept = stays(
        master,
        session.bench,
        change,
        loose=loose,
        free_from=scene.length if free_from is None else free_from,
        pushed=pushed,
    )
    return Scenario(
        scene=scene,
        document=document,
        clip=clip,
        task=Task(session.bench, master, change, (*news(change, mixed), *kept)),
        story=story,
        wish=wish,
        rule=rule,
        instead=instead,
    )


def replayed(session: EditSession) -> Tape:
    """The session's master after its edits, which are long past: none is named as a cause."""
    tape = session.master
    for edit in session.edits:
        tape = record(tape, edit, session.bench)
    return tape


def news(change: Change, mixed: tuple[int, int] | None) -> Iterator[Demand]:
    """What is to be new, track by track."""
    for track in change.tracks:
        start, end = mixed if mixed and track == "picture" else (change.at, change.at)
        for first, last in ((change.at, start), (start, end), (end, change.end)):
            if first < last:
                yield Demand.over(
                    track,
                    first,
                    last,
                    change.source.name,
                    change.in_ + first - change.at,
                    new=True,
                    mixed=first == start and start < end,
                )


def stays(
    master: Tape,
    bench: Bench,
    change: Change,
    *,
    loose: Collection[Side],
    free_from: int,
    pushed: bool,
) -> Iterator[Demand]:
    """What plays now and must play after, where it is or (`pushed`) later by the change."""
    for track in SIDES:
        replaced = track in change.tracks or track in loose
        resumes = change.end if replaced and not pushed else change.at
        yield from playing(master, bench, track, 0, min(change.at, free_from))
        for want in playing(master, bench, track, resumes, free_from):
            yield _moved(want, change.end - change.at) if pushed else want


def _moved(want: Demand, frames: int) -> Demand:
    return replace(want, at=want.at + frames, moved=frames)
