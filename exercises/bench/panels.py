"""What stands in each panel of the worktop: a panel is sent again when its values differ."""

from typing import Any

from exercises.bench.forms.controls import MODE_TITLES, SOUND_TITLES
from exercises.bench.forms.edits import MARKS
from exercises.bench.media_address import MONITORS, address, monitors, shown_at
from exercises.drills.asks import Json
from exercises.drills.kinds.knobs.control import place_in_words
from exercises.drills.kinds.set_tracking.meter import in_words
from exercises.drills.setting.phrases import code
from exercises.models import BenchAction, PracticalRun
from exercises.tape import SoundMode, tape_map
from exercises.worktop.actions.hints import DEPTHS
from exercises.worktop.adjusted import Adjusted
from exercises.worktop.guide import next_step
from exercises.worktop.numbered import numbered
from exercises.worktop.played import played
from exercises.worktop.practical import MASTER, Way
from exercises.worktop.worktop import FURTHEST, Worktop

NO_TRACKS = "A real bench shows no tracks; here you may look."
RUNS_TAPE = ("look-back", "rehearse", "play")
HINTS = [
    {"depth": "what", "title": "What would come next?"},
    {"depth": "why", "title": "Why that?"},
    {"depth": "how", "title": "How is it done?"},
]


def panels(run: PracticalRun, last: BenchAction | None) -> dict[str, Json]:
    """Every panel's values, by name, in the order of the page."""
    top = run.worktop
    return {
        "told": told(top, last),
        "guide": guide(run, top, last),
        "monitors": on_monitors(top),
        "player": player(top),
        "recorder": recorder(top),
        "edit": edit(top),
        "map": the_map(run, top),
        "played": {},
    }


def as_it_stood(run: PracticalRun, top: Worktop, last: BenchAction | None) -> dict[str, Json]:
    """What is looked at afterwards: also the tracks, which nobody sees while it goes on."""
    return {
        "told": told(top, last),
        "monitors": on_monitors(top),
        "player": player(top),
        "recorder": recorder(top),
        "edit": edit(top),
        "map": the_map(run, top) if run.is_open else mapped(top, faults=True),
    }


def told(top: Worktop, last: BenchAction | None) -> Json:
    second = top.set_up.bench.rate.nominal
    minutes, seconds = divmod(top.clock // second, 60)
    return {
        "last": last.told if last else "",
        "sign": last.sign if last else "",
        "done": top.done,
        "spent": f"{minutes}:{seconds:02}",
        "minutes": top.set_up.minutes,
        "over": top.clock > top.set_up.minutes * 60 * second,
    }


def guide(run: PracticalRun, top: Worktop, last: BenchAction | None) -> Json:
    """While it is shown how: the step that comes next, and why. Half done: hints, if asked for."""
    if top.handed_in or run.way == Way.ALONE:
        return {}
    if run.way == Way.FINISH:
        asked = last.arguments["depth"] if last and last.name == "hint" else ""
        return {"hints": HINTS[: DEPTHS.index(asked) + 2] if asked else HINTS[:1]}
    step = next_step(top)
    return {} if step is None else {"what": step.what, "why": step.why, "how": step.how}


def on_monitors(top: Worktop) -> Json:
    return {"shown": [medium.as_json() for medium in monitors(top)]}


def player(top: Worktop) -> Json:
    stand, tape, bench = top.player, top.source, top.set_up.bench
    take = tape.take_at(stand.at) if tape else None
    meter = Adjusted(stand, tape, bench.rate).meter if tape and take else None
    return {
        "tape": stand.tape,
        "shelf": [] if stand.tape else on_shelf(top),
        "counter": code(stand.at, bench) if stand.tape else "",
        "tracking": knob(stand.tracking),
        "skew": knob(stand.skew),
        "meter": in_words(meter) if meter is not None else None,
        "needle": meter,
        "lit": take is not None,
    }


def recorder(top: Worktop) -> Json:
    stand = top.recorder
    made = "assemble" if stand.mode == "assemble" else insert_of(stand.picture, stand.sound)
    return {
        "tape": stand.tape,
        "shelf": [] if stand.tape else on_shelf(top),
        "counter": code(stand.at, top.set_up.bench) if stand.tape else "",
        "tracking": knob(stand.tracking),
        "modes": choices(MODE_TITLES, made),
        "made": MODE_TITLES[made],
        "picture_by": choices(
            {"automatic": "Automatic", "hand": "By hand"},
            "automatic" if stand.picture_gain is None else "hand",
        ),
        "picture_gain": (stand.picture_gain or 0) / 10,
        "picture_told": "automatic"
        if stand.picture_gain is None
        else f"{stand.picture_gain / 10:+g} dB",
        "sound_told": f"{SOUND_TITLES[SoundMode(stand.sound_mode)]}, {stand.sound_gain / 10:+g} dB",
        "sound_modes": choices(SOUND_TITLES, stand.sound_mode),
        "sound_gain": stand.sound_gain / 10,
        "shows": choices({"input": "Its input", "tape": "Its tape"}, stand.shows),
        "running": top.running,
    }


def insert_of(picture: bool, sound: bool) -> str:
    return "insert-both" if picture and sound else "insert-picture" if picture else "insert-sound"


def edit(top: Worktop) -> Json:
    bench = top.set_up.bench
    marked = {which: getattr(top.marks, which) for which, _ in MARKS}
    return {
        "marks": [
            {
                "which": which,
                "title": title,
                "at": code(marked[which], bench) if marked[which] is not None else "",
                "machine": "recorder" if which == "master_in" else "player",
            }
            for which, title in MARKS
        ],
        "running": top.running,
        "made": len(top.edits),
        "looked_back": top.looked_back,
        "handed_in": top.handed_in,
    }


def the_map(run: PracticalRun, top: Worktop) -> Json:
    """On a real bench nobody sees the tracks: only while one is guided."""
    return {} if top.set_up.unaided else mapped(top, faults=run.way != Way.ALONE)


def mapped(top: Worktop, *, faults: bool) -> Json:
    """The master as far as anything lies or is wanted on it."""
    names = {tape.name: tape.name for tape in top.set_up.tapes}
    master, bench = top.master, top.set_up.bench
    wanted = top.set_up.document["brief"]
    ends = [each.end for track in (master.picture, master.sound) for each in track.laid]
    ends += [each["at"] + each["out"] - each["in"] for each in wanted["picture"] + wanted["sound"]]
    end = min(max(ends, default=0) + 10 * bench.rate.nominal, master.length)
    shown = numbered(tape_map(master, bench, end=end, names=names, faults=faults), top.set_up)
    return {"map": shown.as_json(), "caption": NO_TRACKS}


def played_by(run: PracticalRun, last: BenchAction | None, before: Worktop | None = None) -> Json:
    """Pictures and sounds of what ran last, with their addresses; `before` is how it stood then."""
    if last is None or last.name not in RUNS_TAPE:
        return {}
    if before is not None and before.done + 1 == last.number == run.done:
        media = played(before, last.name, last.arguments, run.worktop)
    else:
        media = shown_at(run, last.number)[MONITORS:]
    return {
        "number": last.number,
        "media": [
            {"spec": medium.as_json(), "url": address(run, last.number, index)}
            for index, medium in enumerate(media, MONITORS)
        ],
    }


def on_shelf(top: Worktop) -> list[str]:
    away = {top.player.tape, top.recorder.tape}
    return [name for name in (MASTER, *top.set_up.by_name) if name not in away]


def knob(position: int) -> Json:
    return {
        "at": position,
        "told": place_in_words(position + FURTHEST),
        "angle": round(7.5 * position, 1),
        "least": -FURTHEST,
        "most": FURTHEST,
    }


def choices(titles: Any, chosen: str) -> list[Json]:
    return [
        {"value": str(value), "title": title, "chosen": value == chosen}
        for value, title in titles.items()
    ]
