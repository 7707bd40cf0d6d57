"""Marks: what an edit out means, and on which side of the right frame to err."""

from exercises.drills.asks import Moment
from exercises.drills.judging.rules import MARK_EARLY, OUT_LESS_IN
from exercises.drills.kinds.sums_on_the_clock.total import Part, Term, Total
from exercises.drills.setting.quay_street import ACTIONS, TALKS, TAPES
from exercises.drills.setting.scene import Scene

LAST = "out-is-last-frame"
LATE = "late-is-safer"
COUNTED = (2, 6)  # frames by which a controller that counts pulses may be out; common practice


def out_after_a_last_frame(scene: Scene) -> Total:
    """The last frame that is wanted is known; where is the edit out?"""
    tape, shot = scene.draw.pick(TAPES), scene.draw.pick(ACTIONS).picture
    last = scene.seconds(60, 1800)
    return Total(
        story=scene.draw.pick(
            (
                f"On {tape}, {scene.person} goes to and fro over the end of {shot}, and stops at "
                "the last frame that is still to be seen.",
                f"{scene.person} takes {shot} from {tape}. The last frame that belongs has been "
                "found, and all up to it is wanted.",
            )
        ),
        facts=((f"Last frame wanted, on {tape}", scene.code(last)),),
        parts=(
            Part(
                ask=Moment(
                    name="out",
                    legend=f"Which edit out is set on {tape}?",
                    rate=scene.rate.label,
                    drop=scene.bench.drop_frame,
                ),
                terms=(
                    Term(words="the last frame wanted", count=last),
                    Term(words="on to the first that no longer belongs", count=1, unless=LAST),
                ),
            ),
        ),
        rule=OUT_LESS_IN,
    )


def end_of_two_shots(scene: Scene) -> Total:
    """Two shots by their edits in and out; where does the second end?"""
    at, ins = scene.seconds(30, 600), [scene.seconds(60, 1500) for _ in range(2)]
    outs = [in_ + scene.seconds(4, 30) for in_ in ins]
    tapes = scene.draw.shuffled(TAPES)[:2]
    return Total(
        story=f"{scene.person} assembles two shots, one right after the other, and stops the "
        "recording at each edit out.",
        facts=(
            ("Edit in on the edit master, first shot", scene.code(at)),
            *(
                (f"On {tape}, edit in and edit out", f"{scene.code(in_)}, {scene.code(out)}")
                for tape, in_, out in zip(tapes, ins, outs, strict=True)
            ),
        ),
        parts=(
            Part(
                ask=Moment(
                    name="end",
                    legend="At which time code does a third shot begin that follows at once?",
                    rate=scene.rate.label,
                    drop=scene.bench.drop_frame,
                ),
                terms=(
                    Term(words="where the first begins", count=at),
                    *(
                        Term(words=f"edit out less edit in, on {tape}", count=out - in_)
                        for tape, in_, out in zip(tapes, ins, outs, strict=True)
                    ),
                    Term(words="the frames at the two edits out", count=2, only=LAST),
                ),
            ),
        ),
        rule=OUT_LESS_IN,
    )


def mark_that_may_be_out(scene: Scene) -> Total:
    """A controller that may be some frames out: where is the mark set?"""
    end, out = scene.seconds(60, 1500), scene.draw.whole(*COUNTED)
    shot, talk = scene.draw.pick(ACTIONS).picture, scene.draw.pick(TALKS).picture
    return Total(
        story=scene.draw.pick(
            (
                f"{scene.person} is to assemble {shot} after {talk}. The controller counts "
                "pulses and may be some frames out, either way.",
                f"The film so far ends with {talk}, and {shot} follows by assemble. Nobody can "
                "say on which side this controller misses its mark, only by how much at most.",
            )
        ),
        facts=(
            (f"On the edit master, the end of {talk}", scene.code(end)),
            ("The recording begins at the mark, or off it by up to", scene.lasting(out)),
            ("Some of the last frames there", "may be lost"),
        ),
        parts=(
            Part(
                ask=Moment(
                    name="in",
                    legend="Which edit in on the edit master is safe, and loses no more than it "
                    "must?",
                    rate=scene.rate.label,
                    drop=scene.bench.drop_frame,
                ),
                terms=(
                    Term(words="where the film ends", count=end),
                    Term(
                        words="early by what it may be out, so that no hole is left",
                        count=out,
                        sign=-1,
                        unless=LATE,
                    ),
                    Term(words="late by what it may be out", count=out, only=LATE),
                ),
            ),
        ),
        rule=MARK_EARLY,
        note=f"At worst the recording then begins at {scene.code(end)}, or loses "
        f"{scene.lasting(2 * out)} of the last shot.",
    )
