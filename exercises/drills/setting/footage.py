"""What the tapes of these drills show: scenes of the film as they are drawn, in words."""

from exercises.drills.setting.quay_street import Shot
from exercises.signal.patterns import BARS

FOOTAGE: dict[str, Shot] = {
    "harbour": Shot("the harbour at dawn", "a far-off engine"),
    "turning": Shot("the bridge turning", "the gears under the bridge"),
    "winch": Shot("the keeper at the winch", "the winch and the chain"),
    "lever": Shot("the keeper’s hand on the lever", "the bolt"),
    "keeper": Shot("the keeper in his hut", "the keeper on his first winter"),
    "clerk": Shot("the harbour clerk among her files", "the clerk on forty years of logbooks"),
    "tools": Shot("the tools on the wall of the hut", "rain"),
    "photograph": Shot("the old photograph of the bridge", "a lamp’s hum"),
    "passing": Shot("a tug passing the open bridge", "the tug’s horn"),
}

# What else can be on a tape.
EVERYTHING = {**FOOTAGE, **dict.fromkeys(BARS, Shot("colour bars", "line-up tone"))}

# Those with long upright lines.
UPRIGHT = ("turning", "winch", "clerk", "tools", "photograph", "passing")

# Those whose brightest part is a pure white.
WITH_WHITE = ("turning", "clerk")
