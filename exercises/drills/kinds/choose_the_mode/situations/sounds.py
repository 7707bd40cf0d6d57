"""A sound is wanted and no picture."""

from exercises.drills.judging.rules import CONTINUE, ONE_TRACK
from exercises.drills.kinds.choose_the_mode.scenario import Scenario, scenario
from exercises.drills.setting.films import assembled, either, prepared
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.quay_street import ACTIONS, SOUNDS, TALKS
from exercises.drills.setting.scene import Scene


def sound_first_on_new_tape(scene: Scene) -> Scenario:
    film = assembled(scene)
    clip = scene.clip(scene.seconds(6, 20), SOUNDS)
    span, sound = scene.span(film.end, film.end + clip.length), clip.shot.sound
    wish = scene.draw.pick(
        (
            f"Next, {sound} is to be heard {span}. Which picture comes with it doesn’t matter: "
            "it will be replaced later. All that is laid so far must stay.",
            f"{scene.person} wants to lay the sound first: {sound}, {span}. "
            "Any picture will do there for now. The film so far must stay as it is.",
        )
    )
    return scenario(
        scene,
        clip,
        film.end,
        story=film.story,
        wish=wish,
        rule=CONTINUE,
        tracks=("sound",),
        loose=("picture",),
    )


def sound_first_on_prepared_tape(scene: Scene) -> Scenario:
    film = prepared(scene)
    clip = scene.clip(scene.seconds(6, 20), SOUNDS)
    span, sound = scene.span(film.end, film.end + clip.length), clip.shot.sound
    wish = scene.draw.pick(
        (
            f"{scene.person} lays the sound first: {sound}, {span}. The picture is to stay "
            "black there until the shots are chosen, and all the rest as it is.",
            f"{begun(span)}, {sound} is to be heard over black. "
            "Nothing else on the tape may change.",
        )
    )
    return scenario(
        scene,
        clip,
        film.end,
        story=film.story,
        wish=wish,
        rule=ONE_TRACK,
        tracks=("sound",),
    )


def new_sound(scene: Scene) -> Scenario:
    film = either(scene)
    shot = scene.draw.pick((film.laid[1], film.laid[3]))
    clip = scene.clip(shot.clip.length, SOUNDS)
    span, sound = scene.span(shot.at, shot.end), clip.shot.sound
    picture, old = shot.clip.shot.picture, shot.clip.shot.sound
    wish = scene.draw.pick(
        (
            f"{begun(span)} we see {picture}. Instead of {old}, {sound} is to be "
            "heard. The picture must stay, and all the rest.",
            f"{scene.person} wants another sound under {picture}, {span}: {sound}. "
            "Keep every picture, and the sound before and after.",
        )
    )
    return scenario(
        scene, clip, shot.at, story=film.story, wish=wish, rule=ONE_TRACK, tracks=("sound",)
    )


def narration_over_shots(scene: Scene) -> Scenario:
    film = either(scene, (TALKS, ACTIONS, ACTIONS, ACTIONS))
    at = film.laid[1].at + scene.seconds(1, 4)
    clip = scene.clip(film.laid[3].at + scene.seconds(1, 4) - at, SOUNDS)
    span, sound = scene.span(at, at + clip.length), clip.shot.sound
    wish = scene.draw.pick(
        (
            f"Across two cuts, {span}, {sound} is to be heard. The pictures stay as they are, "
            "and so does the sound before and after.",
            f"{scene.person} lays {sound} under three shots, {span}. "
            "No picture may change, and no sound outside that stretch.",
        )
    )
    return scenario(scene, clip, at, story=film.story, wish=wish, rule=ONE_TRACK, tracks=("sound",))
