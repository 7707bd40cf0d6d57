"""How an edit was made: the player, the recorder, and their levels."""

from collections.abc import Mapping

from exercises.tape.from_json.bounds import GAIN, SKEW, SNR, TRACK, NumberBounds
from exercises.tape.from_json.document_value import LIMIT, DocumentValue, Fields
from exercises.tape.machines import (
    WELL_ADJUSTED,
    Drift,
    Machines,
    Player,
    Recorder,
    SoundLevel,
    SoundMode,
)

MAKING = ("player", "recorder", "picture_level", "sound_level")
SEED = NumberBounds(0, LIMIT)
STEP = NumberBounds(0, 100)


def read_machines(fields: Mapping[str, DocumentValue]) -> Machines:
    machines = Machines(
        player=_player(fields.get("player")),
        recorder=read_recorder(fields.get("recorder")),
        picture_gain=_picture_gain(fields.get("picture_level")),
        sound=_sound_level(fields.get("sound_level")),
    )
    return WELL_ADJUSTED if machines == WELL_ADJUSTED else machines


def _player(given: DocumentValue | None) -> Player:
    fields = _optional(given, ("tracking", "skew", "drift"))
    return Player(
        tracking=_figure(fields, "tracking", TRACK),
        skew=_figure(fields, "skew", SKEW),
        drift=_drift(fields["drift"]) if "drift" in fields else None,
    )


def _drift(given: DocumentValue) -> Drift:
    fields = given.known_fields(("seed",), ("tracking", "skew", "reel"))
    return Drift(
        SEED.read(fields["seed"]),
        tracking=_figure(fields, "tracking", STEP),
        skew=_figure(fields, "skew", STEP),
        reel=_figure(fields, "reel", TRACK),
    )


def read_recorder(given: DocumentValue | None) -> Recorder:
    fields = _optional(given, ("name", "tracking", "snr"))
    return Recorder(
        name=fields["name"].text() if "name" in fields else Recorder().name,
        tracking=_figure(fields, "tracking", TRACK),
        snr=SNR.read(fields["snr"]) if "snr" in fields else None,
    )


def _picture_gain(given: DocumentValue | None) -> int | None:
    """The gain in 0.1 dB; None leaves the level to the recorder."""
    if given is None:
        return None
    if isinstance(given.value, str):
        given.one_of(("automatic",))
        return None
    return GAIN.read(given.known_fields(("gain",))["gain"])


def _sound_level(given: DocumentValue | None) -> SoundLevel:
    fields = _optional(given, ("mode", "gain"))
    modes = [mode.value for mode in SoundMode]
    mode = SoundMode(fields["mode"].one_of(modes)) if "mode" in fields else SoundMode.BY_HAND
    return SoundLevel(mode, _figure(fields, "gain", GAIN))


def _optional(given: DocumentValue | None, known: tuple[str, ...]) -> Fields:
    return {} if given is None else given.known_fields((), known)


def _figure(fields: Mapping[str, DocumentValue], key: str, bounds: NumberBounds) -> int:
    """A figure that is 0 where it is not said."""
    return bounds.read(fields[key]) if key in fields else 0
