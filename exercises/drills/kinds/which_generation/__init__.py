"""Which generation? A chain of dubs and edits: what each shot of the edit master has become."""

from exercises.drills.asks import Json
from exercises.drills.beliefs import telling_apart
from exercises.drills.judging.rules import GENERATIONS_ADD
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.which_generation.answers import BELIEFS, answer, asks, clear, to_choose
from exercises.drills.kinds.which_generation.chains import DRAWN, Chain, Work, copied
from exercises.drills.kinds.which_generation.reels import WHOLE, CopiedShot
from exercises.drills.kinds.which_generation.verdict import grade, near
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.phrases import begun
from exercises.drills.setting.settings import Settings

# Of what is drawn, how often the camera original can’t be had: more often where the story names it
# first, so that the tape named first is seldom the best.
GONE_FIRST, GONE_LATER = 0.68, 0.34


def candidate(draw: Draw, _: Settings) -> Question | None:
    """What the seed draws at any bench; None where two beliefs answer alike."""
    chain, times = draw.pick(DRAWN)
    return question(chain, Work(draw), times)


def question(chain: Chain, work: Work, times: int) -> Question | None:
    """`times`: how often all of the edit master is copied once more."""
    segments = copied(work, work.draw.shuffled(chain(work)), times)
    asked = work.draw.pick([each for each in segments if len(to_choose(each)) > 1])
    original = asked.reel.line[0].name
    share = GONE_FIRST if named_first(work) == original else GONE_LATER
    gone = original if work.draw.chance(share) else ""
    if not clear(asked, gone):
        return None
    believed = telling_apart.as_many_as_can_be(
        work.draw.shuffled(BELIEFS), lambda beliefs: answer(segments, asked, gone, beliefs)
    )
    if believed is None:
        return None
    return Question(
        situation=slug_of(chain.__name__),
        skill=GENERATIONS_ADD.skill,
        asks=asks(segments, asked, work.on, [reel.name for reel in work.reels]),
        shown=page(work, segments, gone),
        right=believed[0][1],
        rule=GENERATIONS_ADD.as_json(),
        believed=believed,
        key={
            "chains": [list(each.reel.chain) for each in segments],
            "asked": segments.index(asked),
            "told": told(segments, asked, gone),
        },
    )


def named_first(work: Work) -> str:
    return min((reel.name for reel in work.reels if reel.name in work.story), key=work.story.index)


def page(work: Work, segments: list[CopiedShot], gone: str) -> Json:
    master, *copies = [reel for reel in segments[0].reel.line if reel.name in WHOLE]
    return {
        "story": f"{work.story} {lost(work, gone)}" if gone else work.story,
        "tapes": [[reel.name, begun(reel.told())] for reel in work.reels]
        + [[master.name, f"Recorded at {master.snr} dB"]]
        + [[reel.name, f"Recorded at {reel.snr} dB, all of it at once"] for reel in copies],
        "shots": [[each.shot.picture, each.reel.line[-2 - len(copies)].name] for each in segments],
        "on": work.on,
    }


def lost(work: Work, gone: str) -> str:
    return work.draw.pick(
        (
            f"{gone} has been recorded over since.",
            f"{gone} is worn out by now and is played no more.",
            f"{gone} can no longer be had.",
        )
    )


def told(segments: list[CopiedShot], asked: CopiedShot, gone: str) -> Json:
    best = min(to_choose(asked, gone), key=lambda reel: reel.generation)
    return {
        "ways": [each.way() for each in segments],
        "sum": asked.sum(),
        "again": f"{best.name} is the earliest tape that holds the shot"
        f"{' and can be had' if gone else ''}: every copy of it has its noise and more.",
    }


KIND = Kind(
    slug=slug_of(__name__),
    title="Which generation?",
    purpose="Tapes copied from tapes: count each shot’s generation, and work out its noise.",
    skills=("what-a-copy-is",),
    lesson="what-an-edit-is",
    revision=4,
    template="drills/kinds/which_generation.html",
    candidate=candidate,
    grade=grade,
    near=near,
)
