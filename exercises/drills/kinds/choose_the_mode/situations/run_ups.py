"""A machine gets too little run-up."""

from exercises.drills.judging.rules import RUN_UP
from exercises.drills.kinds.choose_the_mode.scenario import Scenario, scenario
from exercises.drills.kinds.choose_the_mode.situations.going_on import goes_on
from exercises.drills.kinds.choose_the_mode.situations.pictures import part_of
from exercises.drills.setting.films import assembled, clips, either, inserted_from
from exercises.drills.setting.quay_street import ACTIONS, TALKS
from exercises.drills.setting.scene import Clip, Scene


def short_take(scene: Scene, frames: int) -> tuple[Clip, str]:
    """A clip too near the start of its take, and what could be done about it."""
    clip = scene.clip(frames, run_up=scene.too_short(0, 3.5))
    ready = scene.code(clip.takes[0][0] + scene.bench.lock)
    return clip, f"Begin the shot at {ready} or later in this take, or find another take."


def short_take_next(scene: Scene) -> Scenario:
    film = assembled(scene)
    clip, instead = short_take(scene, scene.seconds(6, 15))
    wish = goes_on(scene, clip, film.end)
    return scenario(
        scene, clip, film.end, story=film.story, wish=wish, rule=RUN_UP, instead=instead
    )


def short_take_inside(scene: Scene) -> Scenario:
    film = either(scene)
    talk = scene.draw.pick((film.laid[0], film.laid[2]))
    at, frames = part_of(scene, talk, 6, 12)
    clip, instead = short_take(scene, frames)
    span, picture = scene.span(at, at + frames), clip.shot.picture
    wish = scene.draw.pick(
        (
            f"{scene.person} wants a new picture {span}: {picture}. The sound there, "
            f"{talk.clip.shot.sound}, must stay, and so must all the rest.",
            f"New picture {span}, {picture}. Keep the sound and everything around.",
        )
    )
    return scenario(
        scene,
        clip,
        at,
        story=film.story,
        wish=wish,
        rule=RUN_UP,
        instead=instead,
        tracks=("picture",),
    )


def new_tape_without_leader(scene: Scene) -> Scenario:
    at, clip = scene.seconds(8, 20), scene.clip(scene.seconds(6, 15))
    story = scene.draw.pick(
        (
            "The edit master is a new tape. Nothing has been recorded on it yet.",
            "A fresh tape is in the recorder, blank from end to end.",
        )
    )
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    wish = scene.draw.pick(
        (
            f"The film is to begin with {picture}, picture and sound, {span}.",
            f"{scene.person} wants to lay the first shot: {picture}, picture and sound, {span}.",
        )
    )
    return scenario(
        scene, clip, at, story=story, wish=wish, rule=RUN_UP, instead=longer_leader(scene, at)
    )


def short_leader(scene: Scene) -> Scenario:
    start = scene.seconds(8, 15)
    at = start + scene.too_short(1, 3.5)
    scene.record(start, at, "leader")
    clip = scene.clip(scene.seconds(6, 15))
    story = scene.draw.pick(
        (
            f"The edit master is a new tape with nothing on it but a leader of black, "
            f"{scene.span(start, at)}.",
            f"On a blank tape {scene.person} has recorded black {scene.span(start, at)}, "
            "as a leader.",
        )
    )
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    wish = scene.draw.pick(
        (
            f"At once after it the film is to begin: {picture}, picture and sound, {span}.",
            f"The first shot is to follow the leader: {picture}, picture and sound, {span}.",
        )
    )
    return scenario(
        scene, clip, at, story=story, wish=wish, rule=RUN_UP, instead=longer_leader(scene, at)
    )


def longer_leader(scene: Scene, at: int) -> str:
    least = scene.lasting(scene.bench.lock)
    return f"First record a leader of {least} or more in one go, up to {scene.code(at)}."


def soon_after_a_new_phase(scene: Scene) -> Scenario:
    """An insert just after the place where a second recording of black began."""
    parts = clips(scene, (TALKS, ACTIONS, TALKS))
    start = scene.seconds(10, 30)
    joint = start + scene.seconds(4, 10)
    scene.record(0, joint, "black")
    scene.record(joint, scene.length, "black")
    film = inserted_from(scene, start, parts)
    at = joint + scene.past_a_joint()
    clip = scene.clip(scene.seconds(4, 10))
    usual = scene.bench.relock == scene.rate.nominal
    rolls = "a second" if usual else scene.lasting(scene.bench.relock)
    story = scene.draw.pick(
        (
            f"The tape was prepared with black in two goes: to {scene.code(joint)}, and from there "
            f"to its end, where the pulses begin anew. The film lies over it "
            f"{scene.span(film.start, film.end)}; it rolls for {rolls} at the joint.",
            f"Black was recorded along the whole tape, but the recorder was stopped at "
            f"{scene.code(joint)} and started again: the pulses begin anew there, and the picture "
            f"rolls for {rolls}. The film runs {scene.span(film.start, film.end)}.",
        )
    )
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    wish = scene.draw.pick(
        (
            f"{scene.person} wants a new picture {span}: {picture}. "
            "The sound must stay, and all that plays now must play on.",
            f"New picture {span}: {picture}. Keep the sound and everything around.",
        )
    )
    ready = scene.code(joint + scene.bench.lock)
    return scenario(
        scene,
        clip,
        at,
        story=story,
        wish=wish,
        rule=RUN_UP,
        tracks=("picture",),
        instead=f"Let the new picture begin at {ready} or later.",
    )
