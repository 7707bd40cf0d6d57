"""The end of the film changes, or something is to run on past it."""

from exercises.drills.judging.rules import CONTINUE, NO_PULSES
from exercises.drills.kinds.choose_the_mode.scenario import Scenario, scenario
from exercises.drills.setting.films import assembled, assembled_from, clips
from exercises.drills.setting.quay_street import ACTIONS, SOUNDS, TALKS
from exercises.drills.setting.scene import Scene


def longer_tail(scene: Scene) -> Scenario:
    """The last shot gives way to one that runs on past the end of the film."""
    film = assembled(scene)
    last = film.laid[-1]
    at = last.at if scene.draw.chance(0.5) else last.at + last.clip.length // 3
    clip = scene.clip(film.end - at + scene.seconds(2, 10))
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    wish = scene.draw.pick(
        (
            f"The end doesn’t work. {scene.person} wants {picture} instead, picture and sound, "
            f"{span}. What lies there now may go; what comes before {scene.code(at)} must stay.",
            f"From {scene.code(at)} on the film is to end otherwise: with {picture}, "
            f"picture and sound, until {scene.code(at + clip.length)}. "
            "The old ending may go; everything before it must stay.",
        )
    )
    return scenario(scene, clip, at, story=film.story, wish=wish, rule=CONTINUE, free_from=at)


def gap_before_the_last_shot(scene: Scene) -> Scenario:
    """The last shot was begun too late; it may be laid again."""
    scene.record(0, start := scene.seconds(10, 30), "leader")
    film = assembled_from(scene, start, clips(scene, (TALKS, ACTIONS, TALKS)))
    hole, again = scene.draw.whole(5, 45), scene.clip(scene.seconds(6, 14))
    late = scene.assemble(again, film.end + hole) - again.length
    picture = again.shot.picture
    story = scene.draw.pick(
        (
            f"The film was assembled {scene.span(film.start, late + again.length)}. "
            f"But the last shot, {picture}, was begun too late: between {scene.code(film.end)} "
            f"and {scene.code(late)} the tape is blank.",
            f"At {scene.code(film.end)} the last shot should have followed, {picture}. "
            f"It was laid by assemble from {scene.code(late)} on, and the tape between is blank. "
            f"The film before it begins at {scene.code(film.start)} and plays well.",
        )
    )
    span = scene.span(film.end, film.end + again.length)
    wish = scene.draw.pick(
        (
            f"{scene.person} lays the same shot again, picture and sound, now {span}. "
            "What lies there and after may go; what comes before must stay.",
            f"The shot is to be laid once more, {span}, picture and sound, with no hole before "
            "it. The spoilt one may go; the film before it must stay.",
        )
    )
    return scenario(
        scene, again, film.end, story=story, wish=wish, rule=CONTINUE, free_from=film.end
    )


def picture_past_the_end(scene: Scene) -> Scenario:
    """A new picture that runs past the end of the film, over a sound that is to stay."""
    film = assembled(scene, (ACTIONS, ACTIONS, ACTIONS, TALKS))
    talk = film.laid[-1]
    at = talk.end - scene.seconds(4, 9)
    clip = scene.clip(talk.end - at + scene.seconds(3, 8))
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    wish = scene.draw.pick(
        (
            f"{scene.person} wants to see {picture} {span}. Until {scene.code(talk.end)} the "
            f"sound must stay: {talk.clip.shot.sound}. Beyond it the picture may run on silent.",
            f"The film is to end with {picture}, {span}. The sound that is there, "
            f"{talk.clip.shot.sound}, must be heard to its end at {scene.code(talk.end)}.",
        )
    )
    return scenario(
        scene,
        clip,
        at,
        story=film.story,
        wish=wish,
        rule=NO_PULSES,
        tracks=("picture",),
        instead="First assemble picture and sound over the whole stretch, then insert the old "
        "sound again from its source tape.",
    )


def narration_past_the_end(scene: Scene) -> Scenario:
    """A sound that runs past the end of the film, under a picture that is to stay."""
    film = assembled(scene)
    last = film.laid[-1]
    at = last.end - scene.seconds(3, 4.9)
    clip = scene.clip(last.end - at + scene.seconds(3, 8), SOUNDS)
    span, sound = scene.span(at, at + clip.length), clip.shot.sound
    picture = last.clip.shot.picture
    wish = scene.draw.pick(
        (
            f"{scene.person} wants {sound} to be heard {span}. The last shot, {picture}, must "
            f"be seen to its end at {scene.code(last.end)}; after it the screen may be empty.",
            f"Over the last shot and past its end, {sound} is to be heard, {span}. "
            f"The picture, {picture}, must stay.",
        )
    )
    return scenario(
        scene,
        clip,
        at,
        story=film.story,
        wish=wish,
        rule=NO_PULSES,
        tracks=("sound",),
        instead="First assemble black after the last shot, for as long as the sound runs on; "
        "then insert the sound alone.",
    )
