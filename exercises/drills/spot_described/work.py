"""A session in the making: each edit with what was meant by it."""

from exercises.drills.change import Mode
from exercises.drills.job import Job
from exercises.drills.scene import Clip, Scene
from exercises.drills.wants import Side


class Work:
    """What was done to a master, edit by edit; `story` says what the master was before."""

    def __init__(self, scene: Scene) -> None:
        self.scene = scene
        self.story = ""
        self.start = 0
        self.jobs: list[Job] = []

    @property
    def end(self) -> int:
        """Where the film ends so far; before the first edit, where it is to begin."""
        return max((job.end for job in self.jobs), default=self.start)

    def lay(
        self, clip: Clip, at: int, mode: Mode, purpose: str, meant: tuple[Side, ...] | None = None
    ) -> Job:
        """Add an edit; it was meant to record what it records, unless told."""
        job = Job(clip, at, mode, mode.tracks if meant is None else meant, purpose)
        self.scene.lay(clip, at, mode)
        self.jobs.append(job)
        return job
