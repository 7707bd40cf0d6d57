"""The film goes on past its end."""

from exercises.drills.judging.rules import CONTINUE, PREPARED
from exercises.drills.kinds.choose_the_mode.scenario import Scenario, scenario
from exercises.drills.setting.films import assembled, assembled_from, clips, inserted_from, prepared
from exercises.drills.setting.scene import Clip, Scene


def goes_on(scene: Scene, clip: Clip, at: int) -> str:
    """The wish that a film go on with a clip, picture and sound."""
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    return scene.draw.pick(
        (
            f"The next shot is to be {picture}: picture and sound, {span}. "
            "All that is laid so far must stay as it is.",
            f"{scene.person} wants {picture} to follow at once, picture and sound, {span}. "
            "Nothing that is laid so far may be harmed.",
            f"At {scene.code(at)} the film is to cut to {picture}, picture and sound, "
            f"and stay there until {scene.code(at + clip.length)}. What comes before stays.",
        )
    )


def next_shot_on_new_tape(scene: Scene) -> Scenario:
    film = assembled(scene)
    clip = scene.clip(scene.seconds(4, 15))
    wish = goes_on(scene, clip, film.end)
    return scenario(scene, clip, film.end, story=film.story, wish=wish, rule=CONTINUE)


def next_shot_on_used_tape(scene: Scene) -> Scenario:
    """An old recording lies beyond the film, after the stretch that the last assemble wiped."""
    scene.record(0, scene.length, "old exercise")
    film = assembled_from(scene, scene.seconds(8, 30), clips(scene))
    span = scene.span(film.start, film.end)
    story = scene.draw.pick(
        (
            "The tape has been used: an exercise was recorded along all of it in one go. "
            f"The film was assembled over it, {span}. Nobody needs the exercise any more.",
            f"The film was assembled {span}, onto a tape that somebody had filled with "
            "an exercise before, end to end. What is left of the exercise may go.",
            "First an exercise was recorded along the whole tape; then the film was laid over "
            f"it by assemble, {span}. The remains of the exercise don’t matter.",
        )
    )
    clip = scene.clip(scene.seconds(4, 15))
    wish = goes_on(scene, clip, film.end)
    return scenario(
        scene, clip, film.end, story=story, wish=wish, rule=CONTINUE, free_from=film.end
    )


def next_shot_on_prepared_tape(scene: Scene) -> Scenario:
    film = prepared(scene)
    clip = scene.clip(scene.seconds(4, 15))
    end = scene.code(film.end + clip.length)
    wish = scene.draw.pick(
        (
            f"{goes_on(scene, clip, film.end)} After it the tape must stay as prepared, "
            "for the shots that follow.",
            f"{goes_on(scene, clip, film.end)} The black from {end} on must stay usable: "
            "more shots are to come.",
            f"{goes_on(scene, clip, film.end)} Nor may the black after {end} be touched.",
        )
    )
    return scenario(scene, clip, film.end, story=film.story, wish=wish, rule=PREPARED)


def next_shot_past_the_black(scene: Scene) -> Scenario:
    """Prepared tape that ends in the middle of the shot to come."""
    length = scene.seconds(6, 15)
    parts = clips(scene)
    start = scene.seconds(10, 30)
    at = start + sum(part.length for part in parts)
    black = at + scene.draw.whole(length // 4, 3 * length // 4)
    scene.record(0, black, "black")
    inserted_from(scene, start, parts)
    span, until = scene.span(start, at), scene.code(black)
    story = scene.draw.pick(
        (
            f"Black was recorded from the start of the tape to {until}; beyond that the tape "
            f"is blank. The film lies over the black, {span}.",
            f"The tape was prepared with black, but only as far as {until}. "
            f"The rest was never recorded on. So far the film runs {span}.",
        )
    )
    clip = scene.clip(length)
    wish = goes_on(scene, clip, at)
    return scenario(scene, clip, at, story=story, wish=wish, rule=CONTINUE, free_from=at)
