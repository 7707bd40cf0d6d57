"""Something lies close behind that must stay."""

from exercises.drills.judging.rules import ENDS, MOVES, NO_PULSES
from exercises.drills.kinds.choose_the_mode.scenario import Scenario, scenario
from exercises.drills.kinds.choose_the_mode.situations.going_on import goes_on
from exercises.drills.setting.films import Film, assembled_from, clips, either
from exercises.drills.setting.quay_street import TALKS
from exercises.drills.setting.scene import Clip, Scene


def up_to_another_film(scene: Scene) -> Scenario:
    """Another film further along the tape: near enough to be wiped, or far enough off."""
    near = scene.draw.chance(0.5)
    distance = scene.of_gap(0.2, 1.2) if near else scene.seconds(6, 20)
    parts, clip = clips(scene), scene.clip(scene.seconds(4, 15))
    start = scene.seconds(10, 30)
    at = start + sum(part.length for part in parts)
    other = at + clip.length + distance
    title = scene.draw.pick(("The Ice Boats", "Low Water", "Ferry at Six", "Nets"))
    scene.record(0, start, "leader")
    scene.record(other, other + scene.seconds(60, 120), title)
    film = assembled_from(scene, start, parts)
    story = scene.draw.pick(
        (
            f"The film was assembled {scene.span(film.start, film.end)}. On the same tape "
            f"another group’s film, {title}, begins at {scene.code(other)}; "
            "between the two nothing is recorded.",
            f"Two films share this tape. {title} begins at {scene.code(other)}. The Bridge "
            f"Keeper was assembled {scene.span(film.start, film.end)}, and between them the "
            "tape is blank.",
        )
    )
    wish = f"{goes_on(scene, clip, at)} {title} must stay complete."
    return scenario(
        scene,
        clip,
        at,
        story=story,
        wish=wish,
        rule=ENDS,
        instead=f"Make the shot shorter, so that it ends a few seconds before {title}, "
        "or go on with another tape.",
    )


def hole_without_pulses(scene: Scene) -> Scenario:
    """Blank tape between two parts that must both stay."""
    parts, clip = clips_before(scene), scene.clip(scene.seconds(5, 15))
    start = scene.seconds(10, 30)
    at = start + sum(part.length for part in parts)
    scene.record(0, start, "leader")
    scene.record(at + clip.length, at + clip.length + scene.seconds(60, 120), "second part")
    for part in parts:
        start = scene.assemble(part, start)
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    story = scene.draw.pick(
        (
            f"The first part of the film was assembled and ends at {scene.code(at)}. "
            f"The second part begins at {scene.code(at + clip.length)}; it was recorded there "
            "in one go, before the first. Between the two the tape is blank.",
            f"Two parts of the film are on the edit master. The first, laid by assemble, ends at "
            f"{scene.code(at)}; the second, recorded earlier in one go, begins at "
            f"{scene.code(at + clip.length)}. Nothing was ever recorded between them.",
        )
    )
    wish = scene.draw.pick(
        (
            f"The blank stretch, {span}, is to be filled with {picture}, picture and sound. "
            "Both parts must stay.",
            f"{scene.person} wants {picture} between them, picture and sound, {span}. "
            "Neither part may suffer.",
        )
    )
    return scenario(
        scene,
        clip,
        at,
        story=story,
        wish=wish,
        rule=NO_PULSES,
        instead="Assemble the shot, and after it the whole second part again, from a copy "
        "or from its source tapes.",
    )


def clips_before(scene: Scene) -> list[Clip]:
    return [scene.clip(scene.seconds(20, 90), TALKS), scene.clip(scene.seconds(5, 12))]


def make_room(scene: Scene) -> Scenario:
    """A shot to go between two others, and nothing to be lost."""
    film: Film = either(scene)
    at = film.laid[2].at
    clip = scene.clip(scene.seconds(4, 12))
    before, after = film.laid[1].clip.shot.picture, film.laid[2].clip.shot.picture
    picture, length = clip.shot.picture, scene.lasting(clip.length)
    wish = scene.draw.pick(
        (
            f"At {scene.code(at)} the film cuts from {before} to {after}. Between the two a new "
            f"shot is to come: {picture}, picture and sound, {length} long. All that follows is "
            "to be complete, only later by so much.",
            f"{scene.person} wants {picture} at {scene.code(at)}, picture and sound, for "
            f"{length}. The film from there on must not lose a frame: it is to come after it.",
        )
    )
    return scenario(
        scene,
        clip,
        at,
        story=film.story,
        wish=wish,
        rule=MOVES,
        free_from=film.end,
        pushed=True,
        instead="Lay everything from there on again, later; or let the new shot replace as "
        "much as it is long.",
    )
