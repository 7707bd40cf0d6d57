"""A shot is wanted in the middle of the film, picture and sound."""

from exercises.drills.judging.rules import PREPARED
from exercises.drills.kinds.choose_the_mode.scenario import Scenario, scenario
from exercises.drills.kinds.choose_the_mode.situations.pictures import part_of
from exercises.drills.setting.films import either
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.quay_street import TALKS
from exercises.drills.setting.scene import Scene


def replace_shot(scene: Scene) -> Scenario:
    film = either(scene)
    old = film.laid[1]
    clip = scene.clip(old.clip.length)
    span, picture = scene.span(old.at, old.end), clip.shot.picture
    wish = scene.draw.pick(
        (
            f"The shot {span}, {old.clip.shot.picture}, is to give way to {picture}, "
            "picture and sound. Everything before and after must stay.",
            f"{scene.person} wants {picture}, picture and sound, in place of "
            f"{old.clip.shot.picture}: {span}, exactly as long. Nothing else may change.",
        )
    )
    return scenario(scene, clip, old.at, story=film.story, wish=wish, rule=PREPARED)


def replace_part_of_a_shot(scene: Scene) -> Scenario:
    film = either(scene)
    talk = scene.draw.pick((film.laid[0], film.laid[2]))
    at, frames = part_of(scene, talk, 4, 10)
    clip = scene.clip(frames)
    span, picture, voice = scene.span(at, at + frames), clip.shot.picture, talk.clip.shot.sound
    wish = scene.draw.pick(
        (
            f"In the middle of a long shot ({voice}) a lorry drowns every word {span}. "
            f"There we are to see and hear {picture} instead. After it the shot must go on "
            "as it does now.",
            f"{scene.person} wants to cut away from a long shot ({voice}) to {picture}, picture "
            f"and sound, {span}, and back. The rest of the shot must stay.",
        )
    )
    return scenario(scene, clip, at, story=film.story, wish=wish, rule=PREPARED)


def space_on_prepared_tape(scene: Scene) -> Scenario:
    scene.record(0, scene.length, "black")
    start = scene.seconds(10, 30)
    at = scene.insert(scene.clip(scene.seconds(20, 90), TALKS), start)
    clip = scene.clip(scene.seconds(5, 15))
    end = scene.insert(scene.clip(scene.seconds(20, 90), TALKS), at + clip.length)
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    story = scene.draw.pick(
        (
            "The tape was prepared with black from end to end. The film lies over it "
            f"{scene.span(start, end)}, but {span} a place was left for a shot that was missing.",
            f"On black that was recorded along the whole tape, the film runs "
            f"{scene.span(start, end)}. {begun(span)} there is only the black.",
        )
    )
    wish = scene.draw.pick(
        (
            f"The shot has come: {picture}. It is to fill the place, picture and sound.",
            f"{scene.person} now has {picture} for it, picture and sound. "
            "What lies on either side must stay.",
        )
    )
    return scenario(scene, clip, at, story=story, wish=wish, rule=PREPARED)
