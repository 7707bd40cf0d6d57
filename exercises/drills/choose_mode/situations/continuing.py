"""The film goes on: past its end, into tape that was prepared, or up to something else."""

from exercises.drills.choose_mode.scenario import Scenario, scenario
from exercises.drills.films import assembled, assembled_from, clips, prepared
from exercises.drills.phrases import begun
from exercises.drills.quay_street import ACTIONS, SOUNDS, TALKS
from exercises.drills.rules import CONTINUE, ENDS, NO_PULSES, ONE_TRACK, PREPARED
from exercises.drills.scene import Clip, Scene


def goes_on(scene: Scene, clip: Clip, at: int) -> str:
    """The wish that a film go on with a clip, picture and sound."""
    span, picture = scene.span(at, at + clip.length), clip.shot.picture
    return scene.draw.pick(
        (
            f"The next shot is to be {picture}: picture and sound, {span}. "
            "All that is laid so far must stay as it is.",
            f"{scene.person} wants {picture} to follow at once, {span}, with its sound. "
            "Nothing of the film so far may suffer.",
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
    inserted(scene, start, parts)
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


def inserted(scene: Scene, start: int, parts: list[Clip]) -> None:
    for part in parts:
        start = scene.insert(part, start)


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


def up_to_another_film(scene: Scene) -> Scenario:
    """Another film further along the tape: near enough to be wiped, or far enough off."""
    near = scene.draw.chance(0.5)
    distance = scene.seconds(0.2, 1.2) if near else scene.seconds(6, 20)
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
