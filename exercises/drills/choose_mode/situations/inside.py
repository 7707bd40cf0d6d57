"""Something changes within the film, on one track or both."""

from exercises.drills.choose_mode.scenario import Scenario, scenario
from exercises.drills.films import Film, Laying, either, prepared
from exercises.drills.phrases import begun
from exercises.drills.quay_street import ACTIONS, CARDS, SOUNDS, TALKS
from exercises.drills.rules import MOVES, NO_PULSES, ONE_TRACK, PREPARED
from exercises.drills.scene import Clip, Scene


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
            f"In the middle of a long shot, {voice}, a lorry drowns every word {span}. "
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
            f"Two parts of the film are on the master. The first, laid by assemble, ends at "
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
