"""Rules of picture level and sound level."""

from exercises.drills.judging.rule import Rule

WHITE_LEVEL = Rule(
    text="Set the picture level so that a white stands at 100 IRE, which is 700 mV at "
    "625 lines: above 110 IRE it is clipped for good, and too low it is flat.",
    skill="picture-level",
    lesson="picture-and-sound-levels",
    section="setting-white",
)
BARS_BY_NAME = Rule(
    text="Read on the card which bars they are: the first of their four figures says how much of "
    "a white the white bar is, and there it belongs on the waveform.",
    skill="picture-level",
    lesson="setting-up-the-recorder",
    section="leader",
)
BY_THE_WAVEFORM = Rule(
    text="Set the picture level by waveform or needle: a monitor has controls of its own, and "
    "somebody may have turned them.",
    skill="picture-level",
    lesson="picture-and-sound-levels",
    section="setting-white",
)
CHANNEL_BY_CHANNEL = Rule(
    text="An insert records the sound channels that are chosen, and leaves the other alone.",
    skill="replacing-inside-it",
    lesson="assemble-and-insert",
    section="insert",
)
LISTEN_TO_BOTH = Rule(
    text="A switch chooses which sound channels are heard: listen to each, then to both.",
    skill="sound-level",
    lesson="what-is-on-the-tape",
    section="three-tracks",
)
TWO_METERS = Rule(
    text="Speech and tone go by the VU meter, short knocks by the peak meter: "
    "a needle that is slow on purpose doesn’t show them.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="setting-speech",
)
BLACK_LEVEL = Rule(
    text="Black belongs at 7.5 IRE on most machines for 525 lines, and at blanking, 0, on those "
    "for 625: higher it turns grey, lower its shadows are lost.",
    skill="picture-level",
    lesson="picture-and-sound-levels",
    section="setting-white",
)
LEVEL_IS_LAID = Rule(
    text="What a copy has clipped, or lost in its noise, is so on the edit master for good: look "
    "at its own level, and lay the shot again while you can.",
    skill="picture-level",
    lesson="picture-and-sound-levels",
    section="too-weak-too-strong",
)
SOUND_LEVEL = Rule(
    text="Set every take by hand, so that its loudest words just reach 0 VU: a limiter is for a "
    "few decibels of peaks, and automatic gain lifts the room in every pause.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="limiter-and-automatic-gain",
)
SPEECH_BY_HAND = Rule(
    text="Set speech by hand so that its loudest words just reach 0 VU: too loud distorts for "
    "good, automatic gain lifts every pause.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="setting-speech",
)
LINE_UP = Rule(
    text="Line up on tone: recorded at 0 VU, it tells the next machine where your levels lie.",
    skill="sound-level",
    lesson="setting-up-the-recorder",
    section="leader",
)
EACH_TAKE = Rule(
    text="Two takes at two levels are two edits: set the second by hand, by its own loudest words.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="setting-speech",
)
BELOW_SPEECH = Rule(
    text="Ambience belongs below speech: at its loudest, at about −10 VU (common practice).",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="setting-speech",
)
LIMITER = Rule(
    text="A limiter takes a few decibels off peaks that come without warning. It lifts nothing, "
    "and where there is no peak it does nothing.",
    skill="sound-level",
    lesson="picture-and-sound-levels",
    section="limiter-and-automatic-gain",
)
