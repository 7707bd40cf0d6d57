"""A picture is wanted over a sound that stays."""

from exercises.drills.judging.rules import ONE_TRACK
from exercises.drills.kinds.choose_the_mode.scenario import Scenario, scenario
from exercises.drills.setting.films import Laying, either, prepared
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.quay_street import ACTIONS, CARDS, SOUNDS, TALKS
from exercises.drills.setting.scene import Scene


def part_of(scene: Scene, laying: Laying, low: float, high: float) -> tuple[int, int]:
    """A stretch well inside a laying: where it begins, how long it is."""
    frames = scene.seconds(low, high)
    second = scene.rate.nominal
    return scene.draw.whole(laying.at + second, laying.end - frames - second), frames


def cutaway(scene: Scene) -> Scenario:
    film = either(scene)
    talk = scene.draw.pick((film.laid[0], film.laid[2]))
    at, frames = part_of(scene, talk, 4, 12)
    clip = scene.clip(frames)
    span, picture, voice = scene.span(at, at + frames), clip.shot.picture, talk.clip.shot.sound
    wish = scene.draw.pick(
        (
            f"{begun(span)} we are to see {picture}, while the sound goes on: {voice}. "
            "Everything else must stay.",
            f"{scene.person} wants a new picture {span}: {picture}. The sound there, {voice}, "
            "must stay, and so must all the rest.",
            f"New picture {span}, {picture}. Keep the sound ({voice}) and everything around.",
        )
    )
    return scenario(
        scene, clip, at, story=film.story, wish=wish, rule=ONE_TRACK, tracks=("picture",)
    )


def missing_picture(scene: Scene) -> Scenario:
    """A voice over prepared black, with pictures laid over part of it only."""
    scene.record(0, scene.length, "black")
    start, talk = scene.seconds(10, 30), scene.clip(scene.seconds(30, 60), TALKS)
    end = scene.insert(talk, start, picture=False)
    first = scene.clip(scene.seconds(8, 12))
    at = scene.insert(first, start, sound=False)
    clip = scene.clip(scene.seconds(4, 10))
    scene.insert(scene.clip(end - at - clip.length), at + clip.length, sound=False)
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    story = scene.draw.pick(
        (
            "Black was recorded along the whole tape. Over it a voice was laid, "
            f"{talk.shot.sound}, {scene.span(start, end)}, and then pictures; "
            f"but {span} the picture is still black.",
            f"On a tape prepared with black, the sound is complete {scene.span(start, end)}: "
            f"{talk.shot.sound}. The pictures over it are complete too, but for a black "
            f"stretch {span}.",
        )
    )
    wish = scene.draw.pick(
        (
            f"It is to show {picture}. The voice must run on, and all the rest stay.",
            f"{scene.person} wants to fill it with {picture}. The sound must not change, "
            "nor anything before or after.",
        )
    )
    return scenario(scene, clip, at, story=story, wish=wish, rule=ONE_TRACK, tracks=("picture",))


def card_over_sound(scene: Scene) -> Scenario:
    film = prepared(scene, (ACTIONS, SOUNDS, ACTIONS))
    middle = film.laid[1]
    at, frames = part_of(scene, middle, 4, 8)
    clip = scene.clip(frames, CARDS)
    span, card = scene.span(at, at + frames), clip.shot.picture
    wish = scene.draw.pick(
        (
            f"{scene.person} wants to show {card} {span}. What is heard there, "
            f"{middle.clip.shot.sound}, must go on; nothing else may change.",
            f"Show {card} {span}, and leave the sound and everything around it alone.",
        )
    )
    return scenario(
        scene, clip, at, story=film.story, wish=wish, rule=ONE_TRACK, tracks=("picture",)
    )
