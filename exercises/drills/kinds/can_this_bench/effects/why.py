"""Reasons against answers that more than one effect needs."""

TAKES_ALL = "An assemble always takes picture, sound and pulses."
NO_CLEAN_END = (
    "An assemble can’t end cleanly before what must stay: its pulses don’t join the old ones."
)
LAYS_NONE = "An insert lays no pulses, and where there are none no machine locks."
ENDS_INSIDE = "Where pulses run on, an insert may end inside a shot; what follows stays as it is."
MOVES_NOTHING = "It would take the place of what is there: nothing on a tape moves along."
ONE_PICTURE = "One player gives one picture; nothing on this bench mixes pictures."
NO_FADE = "The level makes no fade of a picture: it leaves a flat, faulty one."
IN_THE_COPY = "It is part of the copied picture: no machine that plays it takes it out."
FIXED = "While it records, a recorder’s tracking stays at its fixed position."
COPY_COSTS = "Each copy adds noise and loses detail: it would be a generation older."
REPLACES = "An insert replaces what was on the tracks that it records, however soft it is."
HOLE_STAYS = "A hole stays: the tape runs through it, and the picture rolls after it."
SAME_FAULT = "The fault is on that tape too: a new copy copies it again."
NOT_THE_RECORDER = "No recorder makes it: there is one picture to record, whichever it is."
WHOLE_SHOT = "Nothing that follows has to be laid again: its place does not change."
NO_ERASING = (
    "Nothing on this drum wipes the old picture: bands of false colour would move over the new one."
)
GOOD_TAPE = "The tape itself is good: there is nothing to lay again."
