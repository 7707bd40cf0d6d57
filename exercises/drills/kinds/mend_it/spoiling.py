"""How a film comes to be spoilt, told as the edits that were made."""

from exercises.drills.kinds.mend_it.repair import OfferedShot
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.quay_street import ACTIONS, TALKS
from exercises.drills.setting.scene import Clip, Scene
from exercises.tape import SIDES, Side
from exercises.tape.judging import Demand

PLACES = 9  # to choose from, for an edit in

Placed = tuple[Clip, int, int, int]  # a clip, from which of its frames on, where, until where


class SpoiltFilm:
    """Three shots on an edit master after a leader, and the repair that they will need.

    `meant` holds, by track, what should be where; `preferred` the same as it would be
    better yet. `onward` is the offer that follows what is spoilt.
    """

    def __init__(self, scene: Scene) -> None:
        self.scene = scene
        start = scene.seconds(10, 25)
        scene.record(0, start, "black")
        self.first = scene.clip(scene.seconds(7, 11), ACTIONS)
        self.talk = scene.clip(scene.seconds(26, 34), TALKS)
        self.last = scene.clip(scene.seconds(7, 11), ACTIONS)
        self.at = start
        self.middle = scene.assemble(self.first, start)
        self.cut = scene.assemble(self.talk, self.middle)
        self.meant: dict[Side, list[Placed]] = {
            side: [
                (self.first, 0, start, self.middle),
                (self.talk, 0, self.middle, self.cut),
            ]
            for side in SIDES
        }
        self.laid = [(self.first, self.at), (self.talk, self.middle)]
        self.happened: list[str] = []
        self.clips: list[tuple[Clip, int, int, str]] = []
        self.places: list[int] = []
        self.preferred: dict[Side, list[Placed]] | None = None
        self.onward: int | None = None

    def finish(self) -> int:
        """The last shot laid well; where it ends."""
        self.laid.append((self.last, self.cut))
        self.mean(self.last, 0, self.cut)
        return self.scene.assemble(self.last, self.cut)

    def either(
        self, liked: Clip, other: Clip, at: int, *, tracks: tuple[Side, ...] = SIDES
    ) -> None:
        """The first clip should lie there, or else the other."""
        kept = {track: list(placed) for track, placed in self.meant.items()}
        self.mean(liked, 0, at, tracks=tracks)
        self.preferred, self.meant = self.meant, kept
        self.mean(other, 0, at, tracks=tracks)

    def mean(self, clip: Clip, skip: int, at: int, *, tracks: tuple[Side, ...] = SIDES) -> None:
        """This clip should lie there, over whatever else was meant."""
        end = at + clip.length - skip
        for side in tracks:
            kept = []
            for each, begun_at, start, stop in self.meant[side]:
                if start < at:
                    kept.append((each, begun_at, start, min(stop, at)))
                if stop > end:
                    later = max(start, end)
                    kept.append((each, begun_at + later - start, later, stop))
            self.meant[side] = [*kept, (clip, skip, at, end)]

    def films(self) -> list[list[Demand]]:
        """What will do, the best first."""
        return [wants(meant) for meant in (self.preferred, self.meant) if meant]

    def offer(self, clip: Clip, told: str, *, skip: int = 0, end: int | None = None) -> int:
        """A stretch of a take that could be recorded; its number."""
        stop = clip.length if end is None else end
        self.clips.append((clip, skip, stop, told))
        return len(self.clips) - 1

    def offers(self) -> list[OfferedShot]:
        return [
            OfferedShot(
                clip.tape,
                clip.in_ + skip,
                clip.in_ + stop,
                f"{begun(told)}: {clip.tape}, "
                f"{self.scene.span(clip.in_ + skip, clip.in_ + stop)}; "
                f"the take there runs {self.scene.span(*clip.takes[0])}",
            )
            for clip, skip, stop, told in self.clips
        ]

    def all_places(self) -> list[int]:
        """Those that matter and others before and after: the right one may stand anywhere."""
        second = self.scene.rate.nominal
        first, last = min(self.places), max(self.places)
        earlier = [self.at, self.at + 3 * second, self.middle]
        earlier += [first - seconds * second for seconds in (2, 4, 5, 6)]
        later = [last + seconds * second for seconds in (3, 6, 10, 14, 18, 22, 25)]
        others = PLACES - len({*self.places})
        before = self.scene.draw.whole(0, others)
        drawn = [*self.scene.draw.shuffled(earlier)[:before], *later[: others - before]]
        return sorted({*self.places, *drawn})

    def within(self) -> int:
        """A place inside the long shot, a run-up from its start."""
        return self.middle + self.scene.seconds(7, 10)


def wants(meant: dict[Side, list[Placed]]) -> list[Demand]:
    return [
        Demand.over(side, start, end, clip.tape, clip.in_ + skip)
        for side in SIDES
        for clip, skip, start, end in sorted(meant[side], key=lambda placed: placed[2])
    ]
