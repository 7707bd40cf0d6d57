"""Rules of what may be asked of two machines, and of what to offer instead."""

from exercises.drills.judging.rule import Rule

CANT = "what-the-bench-cant-do"
LESSON = "what-this-bench-cannot-do"

ONE_PICTURE = Rule(
    text="One player gives one picture at a time: what needs two at once isn’t made here.",
    skill=CANT,
    lesson=LESSON,
    section="one-player",
)
SOUND_MIXES = Rule(
    text="Sound passes through the mixer: there it can be faded and mixed while it is copied.",
    skill=CANT,
    lesson=LESSON,
    section="one-player",
)
FADE_IN_FRONT = Rule(
    text="The level knob makes no fade: cut to black, or fade in front of the camera.",
    skill=CANT,
    lesson=LESSON,
    section="fades",
)
LEAD_OVER = Rule(
    text="Instead of a dissolve, let a shot lead over, or the next sound.",
    skill=CANT,
    lesson=LESSON,
    section="lead-over",
)
MADE_ELSEWHERE = Rule(
    text="An effect that is truly needed is made at another bench, straight from the source "
    "tapes, and brought back as a source tape.",
    skill=CANT,
    lesson=LESSON,
    section="elsewhere",
)
OTHERS_TAPE = Rule(
    text="Before you record on a tape that another recorder has made, ask, and try a joint on "
    "a tape that nobody needs.",
    skill="recorder-set-up",
    lesson="setting-up-the-recorder",
    section="one-recorder",
)
DRUM_ERASES = Rule(
    text="A clean insert needs erase heads on the recorder’s drum: they wipe the old picture "
    "under the new one, and nothing else.",
    skill="recorder-set-up",
    lesson="assemble-and-insert",
    section="insert",
)
DUB_OF_THE_MASTER = Rule(
    text="Make each dub from the edit master, never from another dub.",
    skill="what-a-copy-is",
    lesson="finishing",
    section="dub",
)
ENDS_OF_TAKES = Rule(
    text="A camera that records into the end of a take wipes it: go past the end first.",
    skill="run-up",
    lesson="run-up",
    section="past-the-end",
)
IN_STEP = Rule(
    text="Lips and words are laid by one moment that is seen and heard; sound alone can be "
    "laid again.",
    skill="replacing-inside-it",
    lesson="knowing-a-bad-edit",
    section="level-and-timing",
)
