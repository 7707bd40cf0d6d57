"""The beliefs that a mistake points at, where the tape model is clear about it."""

from collections.abc import Callable, Iterator, Mapping, Sequence

from exercises.tape import Assemble, FaultKind
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes import Mistake, MistakeKind
from exercises.worktop.debrief.mistakes.prevention import one_track
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.wording import tracks_of

Pointing = Callable[[Mistake, EditMade, Proceedings], Iterator[str]]


def beliefs(found: Sequence[Mistake], run: Proceedings) -> tuple[str, ...]:
    """Ids of `exercises.mastery.misconceptions`, each once, in the order of the mistakes."""
    pointed = (
        belief
        for each in found
        if each.made and each.kind in POINTING
        for belief in POINTING[each.kind](each, each.made[0], run)
    )
    return tuple(dict.fromkeys(pointed))


def _no_pulses(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    sound_alone = tracks_of(made.edit) == ["sound"]
    yield "sound-needs-no-pulses" if sound_alone else "insert-lays-pulses"


def _wiped(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    yield "assemble-ends-clean"


def _recorded_over(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    """One track alone was to stay: an insert of both took it, or an assemble."""
    if one_track(found.parts) and len(tracks_of(made.edit)) > 1:
        assemble = isinstance(made.edit, Assemble)
        yield "assemble-picks-tracks" if assemble else "insert-takes-both"


def _hole(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    """Only where the edit itself was late, and not the one before it early."""
    if run.lateness(made) > 0:
        yield "late-is-safer"


def _source_run_up(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    take = made.tape.take_at(made.edit.in_)
    touches = take and any(each.end == take.start for each in made.tape.takes)
    yield "touching-takes-share-pulses" if touches else "no-source-run-up"


def _master_run_up(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    yield "no-master-run-up"


def _tracking(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    """Set once for another tape and left so, or for this one, and left while it moved away."""
    turned = run.turned(made, "tracking")
    if turned and turned.before.player.tape:
        yield "set-once"


def _recorder(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    turned = run.turned(made, "recorder-tracking")
    if turned and turned.arguments["to"]:
        yield "tune-the-recorder"


def _sound_level(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    kinds = {part.kind for part in found.parts}
    if FaultKind.NOISY_PAUSES in kinds:
        yield "agc-evens-out"
    turned = run.turned(made, "sound-level")
    if turned and turned.before.player.tape not in (None, made.edit.source.name):
        yield "one-level-for-all"
    elif turned and FaultKind.DISTORTED_SOUND in kinds:
        yield "hotter-is-better"


def _words(found: Mistake, made: EditMade, run: Proceedings) -> Iterator[str]:
    yield "words-can-spare"


POINTING: Mapping[MistakeKind, Pointing] = {
    MistakeKind.NO_PULSES: _no_pulses,
    MistakeKind.WIPED: _wiped,
    MistakeKind.RECORDED_OVER: _recorded_over,
    MistakeKind.HOLE: _hole,
    MistakeKind.SOURCE_RUN_UP: _source_run_up,
    MistakeKind.MASTER_RUN_UP: _master_run_up,
    MistakeKind.TRACKING: _tracking,
    MistakeKind.RECORDER_TRACKING: _recorder,
    MistakeKind.SOUND_LEVEL: _sound_level,
    MistakeKind.WORDS: _words,
}
