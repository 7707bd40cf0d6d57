"""Rules of what is heard of a bad edit."""

from exercises.drills.judging.rule import Rule

WHOLE_WORDS = Rule(
    text="Cut between words: a word that begins or ends at a cut must be heard whole.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="sound",
)
NO_BREATH = Rule(
    text="A breath right at a cut belongs to words that are not there: cut before it or after it.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="sound",
)
SOUND_ALIKE = Rule(
    text="Both sides of a cut may pass and still not match: a step of more than 3 dB in the speech "
    "is heard.",
    skill="hearing-a-bad-edit",
    lesson="picture-and-sound-levels",
    section="matching",
)
OVER_THE_HISS = Rule(
    text="Speech more than 10 dB under line-up lies too near the hiss, and turning it up later "
    "turns up both.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="sound",
)
UNDER_THE_CEILING = Rule(
    text="Harsh, rough speech was recorded too high: "
    "what the tape can’t hold is lost, and no level brings it back.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="sound",
)
QUIET_PAUSES = Rule(
    text="Noise that swells between the words comes from automatic gain: set the level by hand.",
    skill="hearing-a-bad-edit",
    lesson="picture-and-sound-levels",
    section="limiter-and-automatic-gain",
)
TAPE_ITSELF = Rule(
    text="Sound that dips away from every cut came in with the source tape: play that by itself, "
    "and if it dips there too, use another take.",
    skill="hearing-a-bad-edit",
    lesson="knowing-a-bad-edit",
    section="whose-fault",
)
STEADY_PITCH = Rule(
    text="A pitch that wavers comes from a machine that was not locked: "
    "it needs run-up over pulses in phase.",
    skill="hearing-a-bad-edit",
    lesson="what-is-on-the-tape",
    section="run-up",
)
NO_HOLE = Rule(
    text="Where no sound was copied, or the tape is blank, the room itself falls silent. "
    "Sound that lies there without pulses is heard, and its pitch never settles.",
    skill="hearing-a-bad-edit",
    lesson="what-is-on-the-tape",
    section="pulses",
)
WELL_HEARD = Rule(
    text="At a good cut the voice may change, but words are whole, levels match "
    "and the room goes on.",
    skill="hearing-a-bad-edit",
    lesson="what-an-edit-is",
    section="cuts-only",
)
