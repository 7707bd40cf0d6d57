"""What a copy costs and keeps."""

from exercises.drills.can_this_bench.effect import Effect, says
from exercises.drills.rules import GENERATIONS_ADD, ONE_RECORDER, SET_UP_FIRST

BAND = Effect(
    name="a noise band gone",
    wish=(
        "In {shot}, at {code} on the edit master, there is a noise band: tracking was off when "
        "it was copied. {person} wants the band gone.",
        "{shot} was copied with tracking off, and has a noise band at {code} ever since. "
        "{person} would like to see it without.",
    ),
    right="Yes: copy the shot from its source tape again, with tracking set",
    because="The band is part of the copied picture; the source tape is still good.",
    replies=(
        says(
            "Yes: turn tracking whenever the edit master is played",
            "Tracking at playback finds the copy’s own tracks; the band is in their picture.",
            "replay-repairs",
        ),
        says(
            "Yes: copy the edit master to another tape, which leaves the band out",
            "A copy copies the band, and adds noise of its own.",
        ),
        says(
            "No: a noise band comes from the camera and can’t be avoided",
            "It came from tracking that was off while copying.",
        ),
    ),
    rule=SET_UP_FIRST,
)
OTHER_BENCH = Effect(
    name="finish on the other bench",
    wish=(
        "The film was begun on {room}, as far as {code}. Tonight only the other bench is free, and "
        "{person} wants to go on there with {shot}, without a visible joint.",
        "Nobody sits at the other bench. {person}, whose film on {room} has got to {code}, would "
        "like to lay {shot} there, so that it matches.",
    ),
    right="No: wait for the recorder that the film was begun on",
    because="No two recorders are quite alike, and the joint may show.",
    replies=(
        says(
            "Yes: any recorder that takes the tape will lay the same tracks",
            "No two recorders are quite alike.",
            "recorders-alike",
        ),
        says(
            "Yes: once the other recorder’s tracking is turned to match this tape’s picture",
            "While it records, a recorder’s tracking stays at its fixed position.",
        ),
        says(
            "No: a tape that was recorded on one machine plays on no other",
            "It plays; but what another recorder adds may not join it cleanly.",
        ),
    ),
    rule=ONE_RECORDER,
)
OTHER_ORDER = Effect(
    name="the film in another order",
    wish=(
        "{person} wants the two halves of the film, which meet at {code}, the other way round, "
        "{shot} first, copied from the edit master to a new tape, as good as now.",
        "The film should begin with its second half, {shot} at {code}. {person} would copy both "
        "halves from the edit master to another tape, without loss.",
    ),
    right="Not without loss: every shot copied becomes one generation older",
    because="Each copy adds noise. Going back to the source tapes costs time instead.",
    replies=(
        says(
            "Yes: a copy is as good as whatever it was copied from",
            "Each copy adds noise and loses detail.",
            "copy-is-free",
        ),
        says(
            "No: an edit master can’t be used as a source tape by a player",
            "It can: it has picture, sound and pulses like any other tape.",
        ),
        says(
            "Yes: only the shots at the joint become a generation older, not the others",
            "All that is copied becomes a generation older.",
        ),
    ),
    rule=GENERATIONS_ADD,
)
COPIED = (BAND, OTHER_BENCH, OTHER_ORDER)
