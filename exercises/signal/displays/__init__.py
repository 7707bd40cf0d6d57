"""What a picture is looked at on."""

from collections.abc import Callable

from exercises.signal.arrays import Picture
from exercises.signal.displays.cross_pulse import cross_pulse
from exercises.signal.displays.monitor import monitor, turned, underscan
from exercises.signal.displays.waveform import waveform
from exercises.signal.picture import Look

__all__ = ["CONTRAST", "DISPLAYS", "cross_pulse", "monitor", "underscan", "waveform"]

# dB by which the contrast of a monitor stands off its right place.
CONTRAST = {"monitor": 0.0, "dim-monitor": -3.0, "bright-monitor": 2.5}
DISPLAYS: dict[str, Callable[[Picture, Look, int], Picture]] = {
    "monitor": monitor,
    **{name: turned(decibels) for name, decibels in CONTRAST.items() if decibels},
    "underscan": underscan,
    "cross-pulse": cross_pulse,
    "waveform": waveform,
}
