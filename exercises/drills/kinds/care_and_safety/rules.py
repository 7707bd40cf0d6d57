"""The rules of care and safety: one sentence each."""

from exercises.drills.judging.rule import Rule

CARE = "care-and-safety"

WARM_UP = Rule(
    text="What comes from the cold waits for hours, best overnight: the tape sealed in its "
    "case, the machine as well. The dew lamp is obeyed.",
    skill=CARE,
    lesson="finishing",
    section="climate",
)
SUITABLE_AIR = Rule(
    text="A tape is played and kept in air that suits it and that changes little.",
    skill=CARE,
    lesson="finishing",
    section="climate",
)
UNFIT = Rule(
    text="A tape that fits is not yet one that may be played: wet, hot, mouldy, creased, "
    "cracked or badly wound, it is shown to the person in charge first.",
    skill=CARE,
    lesson="finishing",
    section="not-played",
)
AWAY_FROM_MAGNETS = Rule(
    text="Keep tapes away from whatever holds a magnet.",
    skill=CARE,
    lesson="finishing",
    section="magnets",
)
HANDLE = Rule(
    text="Touch a tape only by its shell, rewind it, and keep it upright in its case.",
    skill=CARE,
    lesson="finishing",
    section="handle",
)
CASSETTE = Rule(
    text="Many machines draw a cassette in and give it back by themselves: no force, no haste, "
    "and the power stays on.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="cassette",
)
STUCK = Rule(
    text="A tape that is stuck: hands off, the power stays on, fetch the person in charge.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="cassette",
)
STANDING_STILL = Rule(
    text="A tape that stands still before turning heads wears: press stop while you talk.",
    skill=CARE,
    lesson="setting-up-the-player",
    section="standing-still",
)
CLOGGED = Rule(
    text="Noise that comes all at once and on every tape comes from the heads: stop recording, "
    "and have them cleaned by somebody licensed to do it.",
    skill=CARE,
    lesson="setting-up-the-recorder",
    section="clog",
)
TURNING = Rule(
    text="Keep fingers, hair, sleeves and cords away from whatever turns.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="turning",
)
COVERS = Rule(
    text="Covers stay shut: only licensed people open a machine, for cleaning too. Where a "
    "cover is off, touch nothing and fetch the person in charge.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="mains",
)
CLEANING = Rule(
    text="Cleaning inside a machine is for licensed people. Where it smells of alcohol, let "
    "air in, touch no switch, and ask.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="cleaning",
)
MAINS = Rule(
    text="Wet, smoke, sparks, metal inside, or a case that tingles: off at the wall if you reach "
    "it dry and safely; if not, keep away and have the supply cut. Then fetch the person in "
    "charge.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="mains",
)
SHOCK = Rule(
    text="When somebody gets a shock, cut the supply before you touch them, then call for "
    "help: the emergency number at once if they don’t answer or breathe; a doctor sees them, "
    "however well they feel.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="emergency",
)
FIRE = Rule(
    text="When something burns: warn everybody, get out, shut the door, call the fire service. "
    "No tape is worth going back for.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="emergency",
)
LIFTING = Rule(
    text="A machine is somebody else’s work to move: leave it, and ask whose.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="lifting",
)
PAUSES = Rule(
    text="Work so that eyes, ears and head last: soft to begin with, with pauses, and no new "
    "edit when you are tired.",
    skill=CARE,
    lesson="your-first-bench-day",
    section="tiring",
)
