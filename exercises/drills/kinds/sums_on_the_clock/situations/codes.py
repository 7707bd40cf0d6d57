"""Time code itself: labels left out, and the counter beside it."""

from exercises.drills.asks import Amount, Moment
from exercises.drills.judging.rules import COUNTER, DROP_LABELS
from exercises.drills.kinds.sums_on_the_clock.total import Part, Term, Total
from exercises.drills.setting.quay_street import ACTIONS, TAPES
from exercises.drills.setting.scene import Scene
from exercises.tape import Rate, TimecodeError, frame_of, label

DROPS = "drop-frame-drops-pictures"
SAME = "counter-is-time-code"


def where_a_copy_ends(scene: Scene) -> Total | None:
    """A copy across minutes in drop-frame code; a believer counts on as if none were dropped."""
    if scene.rate is not Rate.R29_97:
        return None
    start, frames = scene.seconds(100, 1500), scene.seconds(70, 400)
    begins, length = label(start, scene.rate, drop=True), label(frames, scene.rate)
    try:
        plain = frame_of(counted_on(begins, frames), scene.rate)
    except TimecodeError:
        return None
    shot = scene.draw.pick(ACTIONS).picture
    story = scene.draw.pick(
        (
            f"{scene.person} copies {shot} onto a tape with drop-frame time code.",
            f"The next edit master has drop-frame time code. On it, {scene.person} lays {shot}.",
        )
    )
    return Total(
        story=story,
        facts=(
            ("Edit in, drop-frame", begins),
            ("Length of the shot, in pictures", f"{frames:,} ({length} in non-drop code)"),
        ),
        parts=(
            Part(
                ask=Moment(
                    name="end",
                    legend="At which drop-frame time code does the copy end (edit out)?",
                    rate=scene.rate.label,
                    drop=True,
                ),
                terms=(
                    Term(words="the edit in", count=start),
                    Term(words="the pictures copied", count=frames),
                    Term(
                        words="labels left out, not counted",
                        count=start + frames - plain,
                        sign=-1,
                        only=DROPS,
                    ),
                ),
            ),
        ),
        rule=DROP_LABELS,
        note=f"On the way the code leaves out {start + frames - plain} labels. Whoever adds up "
        f"without them comes to {label(plain, scene.rate, drop=True)}; the pictures are all there, "
        "so the label at the end is later by as many.",
    )


def counted_on(begins: str, frames: int) -> str:
    """The label so many frames after another, as if drop-frame code left none out."""
    count = frame_of(begins.replace(";", ":"), Rate.R29_97) + frames
    plain = label(count, Rate.R29_97)
    return ";".join(plain.rsplit(":", 1))


def pictures_lost(scene: Scene) -> Total | None:
    """Two recorders side by side, one of them on drop-frame code."""
    if scene.rate is not Rate.R29_97:
        return None
    start = scene.seconds(0, 900)
    minutes = scene.draw.whole(3, 29)
    end = start + minutes * 60 * scene.rate.nominal
    begins, ends = (label(frame, scene.rate, drop=True) for frame in (start, end))
    dropped = frame_of(ends.replace(";", ":"), scene.rate)
    dropped -= frame_of(begins.replace(";", ":"), scene.rate) + end - start
    first, second = scene.draw.shuffled(TAPES)[:2]
    return Total(
        story=f"At the bridge {scene.person} lets two recorders run side by side, started and "
        f"stopped together: {first} with drop-frame time code, {second} without.",
        facts=((f"{first}, from", begins), (f"{first}, to", ends)),
        parts=(
            Part(
                ask=Amount(
                    name="fewer",
                    legend=f"How many pictures fewer does {first} hold than {second}?",
                    unit="pictures",
                    least=0,
                    most=9999,
                ),
                terms=(
                    Term(words="pictures left out", count=0),
                    Term(words="labels left out", count=dropped, only=DROPS),
                ),
            ),
        ),
        rule=DROP_LABELS,
        note=f"On the way the code leaves out {dropped} labels, and no picture.",
    )


def place_by_the_counter(scene: Scene) -> Total:
    """The counter was set to zero somewhere; which time code stands at its reading?"""
    zero, reading = scene.seconds(60, 3000), scene.seconds(30, 900)
    tape, shot = scene.draw.pick(TAPES), scene.draw.pick(ACTIONS).picture
    return Total(
        story=scene.draw.pick(
            (
                f"{scene.person} set the counter to zero and wound {tape} on to {shot}.",
                f"On {tape}, {scene.person} has gone from one mark to {shot}, by the counter.",
            )
        ),
        facts=(
            ("Time code where the counter was set to zero", scene.code(zero)),
            ("Counter at the shot", scene.counted(reading)),
            ("On the way", "pulses throughout, time code without a break"),
        ),
        parts=(
            Part(
                ask=Moment(
                    name="code",
                    legend="Which time code stands at the shot?",
                    rate=scene.rate.label,
                    drop=scene.bench.drop_frame,
                ),
                terms=(
                    Term(words="time code at zero", count=zero, unless=SAME),
                    Term(words="counted since", count=reading),
                ),
            ),
        ),
        rule=COUNTER,
    )


def counter_of_another_day(scene: Scene) -> Total:
    """Yesterday's reading, when today's zero is elsewhere."""
    first = scene.seconds(60, 600)
    second = first + scene.seconds(20, 300)
    reading = second - first + scene.seconds(60, 900)
    shot = scene.draw.pick(ACTIONS).picture
    return Total(
        story=f"Yesterday {scene.person} noted where {shot} begins, by the counter. Today "
        "somebody else has set it to zero at another place.",
        facts=(
            ("Yesterday’s zero, in time code", scene.code(first)),
            ("Yesterday’s reading at the shot", scene.counted(reading)),
            ("Today’s zero, in time code", scene.code(second)),
        ),
        parts=(
            Part(
                ask=Moment(
                    name="reading",
                    legend="What does the counter show today where the shot begins?",
                    rate=scene.rate.label,
                ),
                terms=(
                    Term(words="yesterday’s reading", count=reading),
                    Term(words="yesterday’s zero", count=first, unless=SAME),
                    Term(words="today’s zero", count=second, sign=-1, unless=SAME),
                ),
            ),
        ),
        rule=COUNTER,
    )
