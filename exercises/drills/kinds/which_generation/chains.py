"""The chains that questions are about. Each returns the segments of the tape asked about."""

from collections.abc import Callable, Iterator

from exercises.drills.kinds.which_generation.reels import (
    FESTIVAL,
    MASTER,
    SALOON,
    CopiedShot,
    CopiedTape,
)
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.quay_street import ACTIONS, BENCHES, PEOPLE, TALKS, TAPES, Shot


class Work:
    """Tapes, people and shots for one question; `reels` are the tapes in use, as they came."""

    def __init__(self, draw: Draw) -> None:
        self.draw = draw
        self.reels: list[CopiedTape] = []
        self.story = ""
        self.on = "the edit master"
        self.person, self.other = draw.shuffled(PEOPLE)[:2]
        self.room = draw.pick(BENCHES)
        self._names: Iterator[str] = iter(draw.shuffled(TAPES))
        self._shots: Iterator[Shot] = iter(draw.shuffled((*ACTIONS, *TALKS)))

    def camera(self) -> CopiedTape:
        return self._kept(CopiedTape(next(self._names), self.draw.whole(42, 46)))

    def dub(self, reel: CopiedTape) -> CopiedTape:
        return self._kept(CopiedTape(next(self._names), self.draw.whole(43, 49), reel))

    def _kept(self, reel: CopiedTape) -> CopiedTape:
        self.reels.append(reel)
        return reel

    def laid(self, *reels: CopiedTape) -> list[CopiedShot]:
        """Shots copied from these tapes onto one, by one recorder."""
        snr = self.draw.whole(43, 48)
        return [CopiedShot(next(self._shots), CopiedTape(MASTER, snr, reel)) for reel in reels]

    def dubbed(self, segments: list[CopiedShot], name: str) -> list[CopiedShot]:
        """The whole tape copied once more."""
        snr = self.draw.whole(43, 48)
        return [CopiedShot(each.shot, CopiedTape(name, snr, each.reel)) for each in segments]


Chain = Callable[[Work], list[CopiedShot]]


def viewing_copy(work: Work) -> list[CopiedShot]:
    camera, other = work.camera(), work.camera()
    dub = work.dub(camera)
    work.story = (
        f"{work.person} made {dub.name}, a dub of {camera.name}, to look at shots at home. "
        f"On {work.room} some shots were then copied from it instead of the camera tape."
    )
    return work.laid(camera, dub, other, dub)


def archive_loan(work: Work) -> list[CopiedShot]:
    archive = work.camera()
    copy = work.dub(archive)
    loan, camera = work.dub(copy), work.camera()
    work.story = (
        f"The harbour’s archive lends what it has of {archive.name}: {work.person} got "
        f"{loan.name}, a copy of a copy, and for one shot {copy.name}. "
        f"{camera.name} is the workshop’s own."
    )
    return work.laid(camera, loan, camera, copy)


def old_master(work: Work) -> list[CopiedShot]:
    camera = work.camera()
    old, fresh = work.dub(camera), work.camera()
    work.story = (
        f"Last year {work.person} edited a first version; it is on {old.name}. "
        f"Some of its shots now go from there into a new one, made on {work.room}."
    )
    return work.laid(old, fresh, camera, old)


def two_cameras(work: Work) -> list[CopiedShot]:
    camera, other = work.camera(), work.camera()
    dub = work.dub(other)
    work.story = (
        f"{work.person} and {work.other} shot with two cameras. {other.name} went to be looked at "
        f"elsewhere for a week, so some shots came from {dub.name}, a dub of it."
    )
    return work.laid(camera, dub, other)


def collected_tape(work: Work) -> list[CopiedShot]:
    first, second = work.camera(), work.camera()
    collected, again = work.dub(first), work.dub(second)
    work.story = (
        f"To have the best shots on fewer tapes, {work.person} copied them from {first.name} and "
        f"{second.name} before editing. In the end not all shots were taken from those copies."
    )
    return work.laid(collected, first, again, second)


def worn_tape(work: Work) -> list[CopiedShot]:
    camera = work.camera()
    dub = work.dub(camera)
    twice = work.dub(dub)
    work.story = (
        f"{camera.name} was shown so often that {work.person} made {dub.name} from it, "
        f"and later {twice.name} from {dub.name}. All three were used for the film."
    )
    return work.laid(dub, twice, camera, twice)


def two_benches(work: Work) -> list[CopiedShot]:
    camera, other = work.camera(), work.camera()
    scene = work.dub(camera)
    work.story = (
        f"{work.other} cut one scene on the other bench, onto {scene.name}. On {work.room} "
        f"{work.person} copies that scene into the film and adds shots of the camera tapes."
    )
    return work.laid(other, scene, scene, camera)


def first_version(work: Work) -> list[CopiedShot]:
    camera = work.camera()
    old, other = work.dub(camera), work.camera()
    work.story = (
        f"The edit master holds shots of {other.name}, and some of {old.name}, a first version "
        f"that {work.person} cut from {camera.name}. What was too dark there comes from the "
        "camera tape again."
    )
    return work.laid(other, old, camera)


def borrowed_shots(work: Work) -> list[CopiedShot]:
    neighbour = work.camera()
    theirs, camera = work.dub(neighbour), work.camera()
    ours = work.dub(theirs)
    work.story = (
        f"A film club lends all its tapes, originals too, for two days each. {work.person} had "
        f"{theirs.name}, dubbed it to {ours.name}, and copied one shot straight from it."
    )
    return work.laid(ours, theirs, camera, ours)


def slowly_mended(work: Work) -> list[CopiedShot]:
    camera, other = work.camera(), work.camera()
    old = work.dub(camera)
    work.story = (
        f"{old.name}, the first edit master, was damaged. What is good goes to a new one on "
        f"{work.room}, the rest comes from the camera tapes once more."
    )
    return work.laid(old, camera, old, other)


def sent_by_post(work: Work) -> list[CopiedShot]:
    camera, other = work.camera(), work.camera()
    dub = work.dub(camera)
    work.story = (
        f"{work.other} shot {camera.name} up the coast, kept it, and sent {dub.name}, a dub. "
        f"When {work.person} had used some of that, the camera tape itself arrived."
    )
    return work.laid(dub, other, dub, camera)


def copied(work: Work, segments: list[CopiedShot], times: int) -> list[CopiedShot]:
    """All of the edit master copied once more, or twice, and told so."""
    if times:
        work.on = "the festival copy"
        work.story += (
            f" {work.other} copies the whole of the finished edit master once more, "
            "for a festival in another town."
        )
        segments = work.dubbed(segments, FESTIVAL)
    if times > 1:
        work.on = "the copy for the ferry’s saloon"
        work.story += " From that copy another is made, to be shown in the ferry’s saloon."
        segments = work.dubbed(segments, SALOON)
    return segments


SHORT: tuple[Chain, ...] = (
    viewing_copy,
    old_master,
    two_cameras,
    collected_tape,
    two_benches,
    first_version,
    slowly_mended,
    sent_by_post,
)
LONG: tuple[Chain, ...] = (archive_loan, worn_tape, borrowed_shots)
CHAINS = (*SHORT, *LONG)

# Chains, with how often all is copied after them: so that no generation is right much more often
# than another.
DRAWN: tuple[tuple[Chain, int], ...] = (
    *(5 * tuple((chain, 0) for chain in (*SHORT, *LONG, *LONG))),
    *(4 * tuple((chain, 2) for chain in SHORT)),
    *(17 * tuple((chain, 1) for chain in LONG)),
)
