"""The habits that are looked for, at the practice bench and at the real one, by slug."""

HABITS = {
    "looked-back": "A look back after each edit",
    "rehearsed": "A rehearsal before a tape’s first edit",
    "tracking": "Tracking set for each source tape",
    "recorder": "The recorder’s tracking left alone",
    "levels": "Levels set by the meters",
    "at-risk": "Nothing irreplaceable put at risk",
}
