"""Mend it: a spoilt edit master, and the recordings that put it right."""

from collections.abc import Sequence

from exercises.drills.asks import Column, Json, Option, Table
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.mend_it import plans
from exercises.drills.kinds.mend_it.repair import OfferedShot, Repair
from exercises.drills.kinds.mend_it.situations import DRAWN, Situation
from exercises.drills.kinds.mend_it.spoiling import SpoiltFilm
from exercises.drills.kinds.mend_it.verdict import drawn, grade
from exercises.drills.question import Question
from exercises.drills.setting.change import Mode
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings
from exercises.tape import read_edit_session

MODES = tuple(Option(value=mode.value, text=mode.words) for mode in Mode)
LETTERS = "ABCDEF"
AROUND = 5  # seconds of tape that maps show on either side of the film


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where no belief can be told from none."""
    return question(draw.pick(DRAWN), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    film = SpoiltFilm(scene)
    rule = situation(film)
    order = scene.draw.shuffled(range(len(film.clips)))
    offers = [film.offers()[number] for number in order]
    places = film.all_places()
    onward = None if film.onward is None else order.index(film.onward)
    repair = Repair(
        read_edit_session(scene.document()), film.films(), offers, places, onward=onward
    )
    found = plans.believed(repair, scene.draw)
    if found is None:
        return None
    believed, alone = found
    right = believed[0][1]
    best = repair.mended(right["recordings"])
    window = _window(film)
    return Question(
        situation=slug_of(situation.__name__),
        skill=rule.skill,
        asks=(table(offers, [scene.code(place) for place in places]),),
        shown=page(film, repair, window),
        right=right,
        rule=rule.at(repair.session.bench),
        believed=believed,
        key={
            "session": scene.document(),
            **repair.as_json(),
            "alone": alone,
            "window": list(window),
            "best": drawn(repair, best, window),
        },
    )


def table(offers: Sequence[OfferedShot], places: Sequence[str]) -> Table:
    shots = tuple(Option(value=str(at), text=f"Shot {LETTERS[at]}") for at in range(len(offers)))
    starts = tuple(Option(value=str(at), text=place) for at, place in enumerate(places))
    return Table(
        name="recordings",
        legend="Which recordings mend it? As few as will do, in their order; leave the rest empty.",
        head="No.",
        lines=("1st", "2nd", "3rd"),
        columns=(
            Column(title="Mode", options=MODES),
            Column(title="What", options=shots),
            Column(title="Edit in on the edit master", options=starts),
        ),
        spare=True,
    )


def page(film: SpoiltFilm, repair: Repair, window: tuple[int, int]) -> Json:
    scene = film.scene
    return {
        "story": opening(scene),
        "laid": [
            f"{scene.span(at, at + clip.length)}: {clip.shot.picture}, with {clip.shot.sound}"
            for clip, at in film.laid
        ],
        "happened": film.happened,
        "shots": [
            [f"Shot {letter}", offer.told]
            for letter, offer in zip(LETTERS, repair.offers, strict=False)
        ],
        "bench": f"{scene.room}, {scene.rate.label} frames a second, "
        f"{scene.pre_roll}; {scene.wiping}",
        "map": drawn(repair, repair.spoilt, window),
        "caption": f"The edit master as it is, {scene.span(*window)}",
    }


def _window(film: SpoiltFilm) -> tuple[int, int]:
    margin = AROUND * film.scene.rate.nominal
    end = max(placed[3] for placed in film.meant["picture"])
    return max(0, film.at - margin), min(film.scene.length, end + margin)


KIND = Kind(
    slug=slug_of(__name__),
    title="Mend it",
    purpose="A spoilt edit master: choose up to three recordings that put it right.",
    skills=(
        "continuing-a-master",
        "replacing-inside-it",
        "run-up",
        "tracks-and-pulses",
        "mending",
    ),
    lesson="knowing-a-bad-edit",
    revision=4,
    template="drills/kinds/mend_it.html",
    candidate=candidate,
    grade=grade,
)
