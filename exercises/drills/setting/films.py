"""How a master of the film may have been made: laid by assemble, or over prepared black."""

from collections.abc import Sequence
from dataclasses import dataclass

from exercises.drills.setting.quay_street import ACTIONS, SOUNDS, TALKS, Shot
from exercises.drills.setting.scene import Clip, Scene

Parts = tuple[tuple[Shot, ...], ...]

PARTS: Parts = (TALKS, ACTIONS, TALKS, ACTIONS)


@dataclass(frozen=True, slots=True)
class Laying:
    """A clip where it lies on the master."""

    clip: Clip
    at: int

    @property
    def end(self) -> int:
        return self.at + self.clip.length


@dataclass(frozen=True, slots=True)
class Film:
    """What is on the master so far, in order, and how the tape came to be so, in words."""

    laid: tuple[Laying, ...]
    story: str

    @property
    def start(self) -> int:
        return self.laid[0].at

    @property
    def end(self) -> int:
        return self.laid[-1].end


def clips(scene: Scene, parts: Sequence[tuple[Shot, ...]] = PARTS) -> list[Clip]:
    """One clip for each part: what people say is long, what is done is short."""
    lengths: dict[tuple[Shot, ...], tuple[int, int]] = {TALKS: (20, 110), SOUNDS: (20, 60)}
    return [scene.clip(scene.seconds(*lengths.get(part, (5, 12))), part) for part in parts]


def assembled(scene: Scene, parts: Sequence[tuple[Shot, ...]] = PARTS) -> Film:
    """A leader, the film laid after it shot by shot; then tape that was never recorded on."""
    start = scene.seconds(10, 30)
    scene.record(0, start, "leader")
    film = assembled_from(scene, start, clips(scene, parts))
    span = scene.span(film.start, film.end)
    story = scene.draw.pick(
        (
            f"After a leader of black, the film was laid shot by shot {span}. "
            "The tape beyond that has never been recorded on.",
            f"The film runs {span}, each shot assembled to the one before; "
            "black comes before it, and after it a tape fresh from the box.",
            f"On a new tape there is a leader of black and then the film, {span}. "
            "Nothing was ever recorded further along.",
        )
    )
    return Film(film.laid, story)


def assembled_from(scene: Scene, start: int, shots: Sequence[Clip]) -> Film:
    laid, at = [], start
    for clip in shots:
        laid.append(Laying(clip, at))
        at = scene.assemble(clip, at)
    return Film(tuple(laid), "")


def prepared(scene: Scene, parts: Sequence[tuple[Shot, ...]] = PARTS) -> Film:
    """The whole tape recorded with black, the film inserted over it."""
    scene.record(0, scene.length, "black")
    film = inserted_from(scene, scene.seconds(10, 30), clips(scene, parts))
    span = scene.span(film.start, film.end)
    story = scene.draw.pick(
        (
            "The tape was prepared: black was recorded from its start to its end in one go. "
            f"Over that black lies the film, {span}.",
            "Before anything else, black was recorded along the whole tape. "
            f"The film was then laid over it, {span}.",
            f"The film lies {span} on a tape that was first recorded with black, end to end.",
        )
    )
    return Film(film.laid, story)


def inserted_from(scene: Scene, start: int, shots: Sequence[Clip]) -> Film:
    laid, at = [], start
    for clip in shots:
        laid.append(Laying(clip, at))
        at = scene.insert(clip, at)
    return Film(tuple(laid), "")


def either(scene: Scene, parts: Sequence[tuple[Shot, ...]] = PARTS) -> Film:
    return scene.draw.pick((assembled, prepared))(scene, parts)
