"""Two sound channels: what an insert on some of them leaves, and which of them is heard."""

from exercises.drills.judging.rules import CHANNEL_BY_CHANNEL, LISTEN_TO_BOTH
from exercises.drills.kinds.read_the_bench.reading import BenchReading
from exercises.drills.setting.quay_street import SOUNDS, TALKS, TAPES
from exercises.drills.setting.scene import Scene

ROOMS = ("the harbour", "the wind", "the crank room", "rain", "the fish market")


def inserted(scene: Scene) -> BenchReading:
    talk, new = scene.draw.pick(TALKS).sound, scene.draw.pick(SOUNDS[:2]).sound
    room, tape = scene.draw.pick(ROOMS), scene.draw.pick(TAPES)
    replies = {
        f"On 1 {new}, on 2 {room}": "That is what an insert on channel 1 leaves.",
        f"On 1 {talk}, on 2 {new}": "That is what an insert on channel 2 leaves.",
        f"{new[:1].upper()}{new[1:]} on both": "That is what an insert on both channels leaves.",
        f"On 1 {talk}, on 2 {room}": "That is what stays where no sound channel is chosen.",
    }
    on = ("sound 1", "sound 2", "sound 1 and sound 2", "picture")
    chosen, right = scene.draw.pick(tuple(zip(on, replies, strict=True)))
    return BenchReading(
        name="insert-on-channels",
        story=f"The edit master has two sound channels. An insert from {tape} is made, at "
        f"{scene.code(scene.seconds(60, 900))}; that tape has the same on both of its channels.",
        facts=(
            ("On channel 1 so far", talk),
            ("On channel 2 so far", room),
            (f"On {tape}", new),
            ("Chosen for the insert", chosen),
        ),
        legend="What lies on the two channels then?",
        replies=replies,
        right=right,
        rule=CHANNEL_BY_CHANNEL,
    )


def listened(scene: Scene) -> BenchReading:
    talk, room = scene.draw.pick(TALKS).sound, scene.draw.pick(ROOMS)
    replies = {
        f"{talk[:1].upper()}{talk[1:]}, and nothing of {room}": "That is what channel 1 alone has.",
        f"{room[:1].upper()}{room[1:]}, and nothing of {talk}": "That is what channel 2 alone has.",
        f"Both of them at once, {talk} and {room}": "That is what both channels together have.",
    }
    switch, right = scene.draw.pick(tuple(zip(("1", "2", "1 and 2"), replies, strict=True)))
    return BenchReading(
        name="listen-to-channels",
        story=f"The edit master has two sound channels. At {scene.code(scene.seconds(60, 900))} "
        f"it is played back, and {scene.person} listens.",
        facts=(
            ("On channel 1", talk),
            ("On channel 2", room),
            ("Switch for the headphones", switch),
        ),
        legend="What is heard?",
        replies=replies,
        right=right,
        rule=LISTEN_TO_BOTH,
    )
