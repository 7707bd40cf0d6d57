"""What came of a shot log, in sentences made from the tape model's own facts."""

from collections.abc import Iterator

from exercises.drills.asks import Json
from exercises.drills.kinds.enough_run_up.shotlog import Entry, Log
from exercises.tape import tape_map

AFTER = 6  # seconds of tape that the map shows beyond the last shot


def told(log: Log, asked: Entry) -> Json:
    scene, last = log.scene, log.entries[-1]
    end = min(scene.length, last.at + last.clip.length + AFTER * scene.rate.nominal)
    first = max(0, log.start - AFTER * scene.rate.nominal)
    return {
        "why": [" ".join(_reasons(log, entry)) for entry in log.listed],
        "earliest": f"The take begins at {scene.code(asked.clip.take[0])}; "
        f"{scene.lasting(log.lock)} later the player is locked. Where you may choose, "
        "leave a second more.",
        "map": tape_map(log.after, log.session.bench, start=first, end=end).as_json(),
        "caption": "The edit master, were all shots edited as they stand in the log",
    }


def _reasons(log: Log, entry: Entry) -> Iterator[str]:
    """Why a shot can't be edited as it is, or that it can."""
    scene = log.scene
    if not entry.hindered(log.lock):
        source, master = (scene.lasting(frames) for frames in (entry.on_source, entry.on_master))
        yield f"It can: its take gives {source} of run-up, the edit master {master}."
    if entry.on_source < log.lock:
        yield f"Its take gives {scene.lasting(entry.on_source)} of run-up before the edit in."
        if entry.touches:
            yield "The take before it gives none: the pulses jump where the two touch."
    if entry.on_master < log.lock:
        yield (
            f"Before it the edit master has {scene.lasting(entry.on_master)} of pulses in phase."
        )
    if entry.ends_early():
        last = scene.code(entry.clip.take[1] - 1)
        yield f"The last frame of its take is {last}, more than one frame before the edit out."
