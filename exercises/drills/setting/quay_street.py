"""The world of the drills: Quay Street Media Workshop and its film, The Bridge Keeper.

Everybody and everything here is invented.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Shot:
    """What a take shows and what is heard with it."""

    picture: str
    sound: str


PEOPLE = (
    "Adaeze",
    "Bram",
    "Cosima",
    "Dilan",
    "Esra",
    "Fionn",
    "Greta",
    "Hamid",
    "Imke",
    "Jonah",
    "Kavita",
    "Leif",
    "Maren",
    "Nuala",
    "Oskar",
    "Paulina",
)

BENCHES = ("Bench 1", "Bench 2")

TAPES = ("Tape 1", "Tape 2", "Tape 3", "Tape 4", "Tape 5", "Tape 6", "Tape 7", "Tape 8")

ACTIONS = (
    Shot("the bridge turning", "the gears under the bridge"),
    Shot("the keeper’s hands on the crank", "the crank and the chain"),
    Shot("a barge passing the open bridge", "the barge’s engine"),
    Shot("gulls on the railing", "gulls"),
    Shot("the barrier coming down", "the barrier’s bell"),
    Shot("cars waiting at the barrier", "idling engines"),
    Shot("the keeper oiling the pivot", "the oil can and the keeper’s breath"),
    Shot("rain on the hut window", "rain"),
    Shot("the tide board close up", "water against the piles"),
    Shot("a tug coming up the channel", "the tug’s horn"),
    Shot("the keeper crossing the road with his lamp", "boots on the road"),
    Shot("the ferry’s lights going by", "music from the ferry"),
    Shot("children counting boats", "children counting"),
    Shot("the keeper pouring tea", "the kettle and the cup"),
    Shot("the logbook being filled in", "a pen on paper"),
    Shot("the locking bolt sliding home", "the bolt"),
    Shot("the harbour at dawn", "a far-off engine"),
    Shot("a sailing boat under the lamps", "ropes against a mast"),
    Shot("the fish market opening", "crates and voices"),
    Shot("the crank room from above", "the echo of the crank room"),
    Shot("the keeper’s dog asleep on the stairs", "the dog breathing"),
    Shot("ice along the quay wall", "ice under a boat"),
    Shot("the night ferry leaving", "the ferry’s horn"),
    Shot("the keeper locking the hut", "the key in the lock"),
)

TALKS = (
    Shot("the keeper in his hut", "the keeper on his first winter"),
    Shot("the keeper at the railing", "the keeper on what the work is"),
    Shot("the keeper at his table", "the keeper on the flood"),
    Shot("the ferry skipper at the wheel", "the skipper on waiting"),
    Shot("the harbour clerk among her files", "the clerk on forty years of logbooks"),
    Shot("the keeper’s sister in her kitchen", "the sister on their father"),
    Shot("the apprentice on the steps", "the apprentice on the crank"),
    Shot("the keeper on the empty bridge", "the keeper saying goodbye"),
)

SOUNDS = (
    Shot("the lamp of the sound room", "the narrator on how the bridge was built"),
    Shot("the sound room’s clock", "the narrator on the last day of the bridge"),
    Shot("the quay at night, out of focus", "the wind on the water"),
    Shot("the floor of the crank room", "the empty crank room"),
    Shot("a microphone on the quay wall", "the harbour at noon"),
    Shot("a hand in front of the lens", "an accordion on the quay"),
)

TITLES = (
    Shot("the title card", "the hum of the titling room"),
    Shot("the card with the keeper’s name", "a chair being moved"),
)
CARDS = (
    *TITLES,
    Shot("the old photograph of the bridge", "a lamp’s hum"),
    Shot("the map of the harbour", "paper on a table"),
)
