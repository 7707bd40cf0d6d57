"""What a picture is looked at on."""

from collections.abc import Callable

from exercises.signal.arrays import Picture
from exercises.signal.displays.cross_pulse import cross_pulse
from exercises.signal.displays.monitor import monitor, underscan
from exercises.signal.displays.waveform import waveform
from exercises.signal.picture import Look

__all__ = ["DISPLAYS", "cross_pulse", "monitor", "underscan", "waveform"]

DISPLAYS: dict[str, Callable[[Picture, Look, int], Picture]] = {
    "monitor": monitor,
    "underscan": underscan,
    "cross-pulse": cross_pulse,
    "waveform": waveform,
}
