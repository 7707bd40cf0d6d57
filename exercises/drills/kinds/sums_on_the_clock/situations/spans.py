"""How long something is, or where it ends, after an insert or across a hole."""

from exercises.drills.asks import Moment
from exercises.drills.judging.rules import MOVES, NO_GAP, OUT_LESS_IN
from exercises.drills.kinds.sums_on_the_clock.total import Part, Term, Total
from exercises.drills.setting.quay_street import ACTIONS, TALKS
from exercises.drills.setting.scene import Scene

PUSHES = "insert-pushes-along"
RAGGED = "insert-ends-ragged"
HEALS = "gap-heals"


def long(scene: Scene, name: str, legend: str) -> Moment:
    """A length: it is written without labels left out."""
    return Moment(name=name, legend=legend, rate=scene.rate.label)


def code(scene: Scene, name: str, legend: str) -> Moment:
    return Moment(name=name, legend=legend, rate=scene.rate.label, drop=scene.bench.drop_frame)


def film_with_a_cutaway(scene: Scene) -> Total:
    """The end of the film, once something has been inserted inside it."""
    start, length = scene.seconds(10, 120), scene.seconds(150, 700)
    at, frames = start + scene.seconds(20, 100), scene.seconds(3, 20)
    shot = scene.draw.pick(ACTIONS).picture
    return Total(
        story=scene.draw.pick(
            (
                f"Inside the film, {scene.person} inserts {shot}, picture alone.",
                f"A cutaway is missing: {shot}. {scene.person} inserts its picture.",
                f"{scene.person} covers part of a talk with {shot}, by an insert.",
            )
        ),
        facts=(
            ("The film begins", scene.code(start)),
            ("Its length before the insert", scene.lasting(length)),
            ("Edit in of the insert", scene.code(at)),
            ("Length of the insert", scene.lasting(frames)),
        ),
        parts=(
            Part(
                ask=code(scene, "end", "At which time code does the film end after the insert?"),
                terms=(
                    Term(words="where the film begins", count=start),
                    Term(words="its length", count=length),
                    Term(words="what is inserted", count=frames, only=PUSHES),
                ),
            ),
        ),
        rule=MOVES,
    )


def film_with_a_new_end(scene: Scene) -> Total:
    """Two inserts and one assemble at the end: which of them makes the film longer?"""
    film = scene.seconds(150, 700)
    inserts = [scene.seconds(3, 20) for _ in range(2)]
    last = scene.seconds(5, 30)
    shots = [shot.picture for shot in scene.draw.shuffled(ACTIONS)[:3]]
    return Total(
        story=f"{scene.person} makes three edits: two inserts inside the film, then one shot "
        "assembled to its end.",
        facts=(
            ("Length of the film before", scene.lasting(film)),
            (f"Inserted: {shots[0]}", scene.lasting(inserts[0])),
            (f"Inserted: {shots[1]}", scene.lasting(inserts[1])),
            (f"Assembled: {shots[2]}", scene.lasting(last)),
        ),
        parts=(
            Part(
                ask=long(scene, "long", "How long is the film now? Write it like a time code."),
                terms=(
                    Term(words="the film before", count=film),
                    Term(words="what is inserted", count=sum(inserts), only=PUSHES),
                    Term(words="what is assembled to its end", count=last),
                ),
            ),
        ),
        rule=MOVES,
    )


def rest_of_the_next_shot(scene: Scene) -> Total:
    """An insert that runs on into the next shot."""
    at, this, next_ = scene.seconds(60, 500), scene.seconds(4, 15), scene.seconds(12, 40)
    longer = scene.seconds(1, 8)
    old, new = scene.draw.pick(TALKS).picture, scene.draw.pick(ACTIONS).picture
    return Total(
        story=f"{scene.person} replaces {old} by a longer shot, {new}: an insert of picture and "
        "sound, at the same edit in. It runs on into the next shot.",
        facts=(
            ("The old shot", scene.span(at, at + this)),
            ("The next shot", scene.span(at + this, at + this + next_)),
            ("Length of the insert", scene.lasting(this + longer)),
        ),
        parts=(
            Part(
                ask=long(
                    scene,
                    "rest",
                    "How much of the next shot is left? Write it like a time code.",
                ),
                terms=(
                    Term(words="where the next shot ends", count=at + this + next_),
                    Term(words="where the old shot begins", count=at, sign=-1),
                    Term(words="the insert", count=this + longer, sign=-1),
                    Term(words="room that the insert makes", count=longer, only=PUSHES),
                ),
            ),
        ),
        rule=OUT_LESS_IN,
    )


def end_of_a_mend(scene: Scene) -> Total:
    """A few spoilt frames inside a shot: where may the insert that covers them end?"""
    start, length = scene.seconds(60, 500), scene.seconds(12, 40)
    at, frames = start + scene.seconds(2, 5), scene.seconds(1, 4)
    shot = scene.draw.pick(ACTIONS).picture
    return Total(
        story=scene.draw.pick(
            (
                f"Inside one shot, {shot}, some frames are spoilt. {scene.person} covers them by "
                "an insert of the same shot. Pulses run on throughout.",
                f"{scene.person} has found spoilt frames in {shot}. The pulses under them are "
                "good; the same frames are to be inserted again, and no more than needed.",
            )
        ),
        facts=(
            ("The shot", scene.span(start, start + length)),
            ("The spoilt frames begin", scene.code(at)),
            ("They last", scene.lasting(frames)),
        ),
        parts=(
            Part(
                ask=code(scene, "out", "What is the earliest edit out that will do?"),
                terms=(
                    Term(words="where they begin", count=at),
                    Term(words="how long they last", count=frames),
                    Term(
                        words="the rest of the shot",
                        count=start + length - at - frames,
                        only=RAGGED,
                    ),
                ),
            ),
        ),
        rule=OUT_LESS_IN,
    )


def across_a_hole(scene: Scene) -> Total:
    """Two shots with blank tape between them."""
    first, second = scene.seconds(6, 30), scene.seconds(6, 30)
    hole = scene.draw.whole(4, scene.rate.nominal + 20)
    shots = [shot.picture for shot in scene.draw.shuffled(ACTIONS)[:2]]
    return Total(
        story=f"Between two shots {scene.person} has left blank tape by mistake. The tape is "
        "played through it.",
        facts=(
            (shots[0], scene.lasting(first)),
            ("Blank", scene.lasting(hole)),
            (shots[1], scene.lasting(second)),
        ),
        parts=(
            Part(
                ask=long(
                    scene,
                    "long",
                    "How long does it take from the start of the first shot to the end of the "
                    "second? Write it like a time code.",
                ),
                terms=(
                    Term(words="the first shot", count=first),
                    Term(words="blank tape", count=hole, unless=HEALS),
                    Term(words="the second shot", count=second),
                ),
            ),
        ),
        rule=NO_GAP,
    )
