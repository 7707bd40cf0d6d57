"""A session in the making: each edit with what was meant by it."""

from exercises.drills.kinds.spot_the_bad_edit.wear import Wear
from exercises.drills.setting.change import Mode
from exercises.drills.setting.job import Job
from exercises.drills.setting.scene import Clip, Scene
from exercises.tape import Side

ON_ANOTHER_MACHINE = "It is played on another machine; on the recorder it plays the same."
WELL_ON_THE_RECORDER = "It is played on another machine; on the recorder it plays well."


class EditsWork:
    """What was done to a master, edit by edit; `story` says what the master was before.

    `worn` are places of the tapes that drop out; `off`: the machine that plays the master in the
    end has its tracking off. `remark` is what was noticed besides; `after` counts the shots that
    are still to come.
    """

    def __init__(self, scene: Scene) -> None:
        self.scene = scene
        self.story = ""
        self.start = 0
        self.jobs: list[Job] = []
        self.worn: list[Wear] = []
        self.off = False
        self.remark = ""
        self.after = 0

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
