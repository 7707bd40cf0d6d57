"""What an assemble takes past its end, and what a bad joint costs."""

from exercises.drills.asks import Amount, Moment
from exercises.drills.judging.rules import AT_ONCE, KEEP_CLEAR
from exercises.drills.kinds.sums_on_the_clock.total import Part, Term, Total
from exercises.drills.setting.quay_street import ACTIONS
from exercises.drills.setting.scene import Scene

CLEAN = "assemble-ends-clean"
LATER = "mend-later"


def where_the_wiping_ends(scene: Scene) -> Total:
    """How far an assemble wipes, in front of another recording."""
    out, gap = scene.seconds(300, 1200), scene.bench.erase_gap
    other = out + gap + scene.seconds(2, 30)
    shot = scene.draw.pick(ACTIONS).picture
    return Total(
        story=scene.draw.pick(
            (
                "An old rehearsal, which could be had again, lies further along the same tape. "
                f"{scene.person} assembles a last shot before it: {shot}.",
                f"{scene.person} ends the film with {shot}, by assemble. Beyond it lies a dub of "
                "an older film; its edit master is on the shelf.",
            )
        ),
        facts=(
            ("Edit out of the assemble", scene.code(out)),
            ("Past its end an assemble wipes", scene.lasting(gap)),
            ("The other recording begins", scene.code(other)),
        ),
        parts=(
            Part(
                ask=Moment(
                    name="end",
                    legend="At which time code does the wiping end?",
                    rate=scene.rate.label,
                    drop=scene.bench.drop_frame,
                ),
                terms=(
                    Term(words="the edit out", count=out),
                    Term(words="what is wiped past the end", count=gap, unless=CLEAN),
                ),
            ),
        ),
        rule=KEEP_CLEAR,
        note="Had the other recording been one that can’t be replaced, nobody would assemble in "
        "front of it, however much room there is: another tape is taken.",
    )


def first_frame_untouched(scene: Scene) -> Total:
    """Where the old recording begins again after an assemble."""
    at, frames, gap = scene.seconds(60, 900), scene.seconds(4, 40), scene.bench.erase_gap
    shot = scene.draw.pick(ACTIONS).picture
    return Total(
        story=scene.draw.pick(
            (
                f"On a tape that was recorded on before, {scene.person} assembles {shot}.",
                f"{scene.person} assembles {shot} over an old rehearsal that runs to the tape’s "
                "end.",
            )
        ),
        facts=(
            ("Edit in", scene.code(at)),
            ("Length", scene.lasting(frames)),
            ("Past its end an assemble wipes", scene.lasting(gap)),
        ),
        parts=(
            Part(
                ask=Moment(
                    name="old",
                    legend="At which time code is the old recording there again?",
                    rate=scene.rate.label,
                    drop=scene.bench.drop_frame,
                ),
                terms=(
                    Term(words="the edit in", count=at),
                    Term(words="the shot", count=frames),
                    Term(words="what is wiped past the end", count=gap, unless=CLEAN),
                ),
            ),
        ),
        rule=KEEP_CLEAR,
    )


def shots_to_lay_again(scene: Scene) -> Total:
    """A rolling joint under later shots, all of them assembled."""
    bad, later = scene.draw.whole(2, 24), scene.draw.whole(2, 30)
    shot = scene.draw.pick(ACTIONS).picture
    return Total(
        story=f"{scene.person} has assembled the film shot by shot, {bad + later} of them, and "
        f"plays it only then. At the start of shot {bad}, {shot}, the pulses begin anew and the "
        "picture rolls. It is mended by assembling, as the film was made.",
        facts=(
            ("Shots on the edit master", str(bad + later)),
            ("The bad joint is at the start of shot", str(bad)),
        ),
        parts=(
            Part(
                ask=Amount(
                    name="again",
                    legend="How many shots must be laid again?",
                    unit="shots",
                    least=0,
                    most=999,
                ),
                terms=(
                    Term(words=f"shot {bad} itself", count=1),
                    Term(words="every shot after it", count=later, unless=LATER),
                ),
            ),
        ),
        rule=AT_ONCE,
    )
