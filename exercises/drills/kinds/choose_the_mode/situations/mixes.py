"""More than a cut is wanted."""

from exercises.drills.judging.rules import CUT
from exercises.drills.kinds.choose_the_mode.scenario import Scenario, scenario
from exercises.drills.setting.films import assembled, either, prepared
from exercises.drills.setting.quay_street import Shot
from exercises.drills.setting.scene import Scene

BLACK = (Shot("black", "silence"),)


def dissolve(scene: Scene) -> Scenario:
    film = scene.draw.pick((assembled, prepared))(scene)
    frames = scene.seconds(1, 2.5)
    clip = scene.clip(scene.seconds(6, 15))
    last = film.laid[-1].clip.shot.picture
    span, long = scene.span(film.end, film.end + clip.length), scene.lasting(frames)
    wish = scene.draw.pick(
        (
            f"The last shot, {last}, is to melt slowly into {clip.shot.picture}: one fades out "
            f"while the other fades in, for {long}. The new shot, with its sound, runs {span}.",
            f"{scene.person} wants a dissolve of {long} at {scene.code(film.end)}, out of {last} "
            f"into {clip.shot.picture}. With its sound, the new shot lies {span}.",
        )
    )
    return scenario(
        scene,
        clip,
        film.end,
        story=film.story,
        wish=wish,
        rule=CUT,
        mixed=(film.end, film.end + frames),
        instead="Cut, or put a shot between the two that makes the change easy on the eye.",
    )


def fade_to_black(scene: Scene) -> Scenario:
    film = either(scene)
    last, frames = film.laid[-1], scene.seconds(1.5, 3)
    at = last.end - frames
    clip = scene.clip(frames, BLACK)
    span = scene.span(at, last.end)
    wish = scene.draw.pick(
        (
            f"The last shot, {last.clip.shot.picture}, is to fade slowly to black {span}. "
            "Its sound must stay as it is.",
            f"{scene.person} wants a slow fade, {span}: from {last.clip.shot.picture} to black. "
            "Keep the sound.",
        )
    )
    return scenario(
        scene,
        clip,
        at,
        story=film.story,
        wish=wish,
        rule=CUT,
        tracks=("picture",),
        mixed=(at, last.end),
        instead="Cut to black, or choose a shot that ends in the dark by itself.",
    )
